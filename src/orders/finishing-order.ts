import { EDGE_BREAK } from '../handbook/edge-break.ts'
import { GRINDING_MIST, PLATED_DUST } from '../handbook/hardening-safety.ts'
import type { CasePlan } from '../hardening/case-plan.ts'
import type { QuenchPlan } from '../hardening/quench-plan.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import { sizeLabel } from './arriving.ts'
import { depthLeft, depthOrdered, isNitrided, surfaceExpected, surfaceLeft } from './case-words.ts'
import type { Drafted } from './drafted.ts'
import { finishedReturns, finishedSizes } from './finished.ts'
import { eccentricity, mostOff, stockFound } from './finishing-stock.ts'
import { jawLimit } from './jaw-limit.ts'
import type { OrderedOperation, Visit } from './order-source.ts'
import { layerAsPlated, layerLeft } from './plating-order.ts'
import { celsius, count, hardness, length, newtons } from './quantity.ts'
import { type Draft, listed, point, type Said, say, sentence } from './say.ts'

/** The order to the grinder, honer or lapper, thirteen points at most. Common practice, no source. */
export function finishingOrder(visit: Visit): Drafted {
  const { source, operations } = visit
  const plated = platedIn(visit)
  const cased = plated ? undefined : source.case
  const finish = finishedSizes(source, operations)
  return {
    points: [
      ...arrival(visit, cased, plated),
      ...point('Datums and set-up', ...setUp(visit, cased)),
      ...stockFound(visit),
      ...mostOff(visit, plated ? 'plating' : cased ? 'case' : undefined),
      ...eccentricity(visit),
      ...point('Wheel, stones, coolant', ...tool(visit, plated ? undefined : (source.quench ?? cased), plated)),
      ...portEdges(visit, plated),
      ...point('Burn', ...burn(operations, plated ? undefined : (source.quench ?? cased))),
      ...point('Packing', 'Demagnetised, clean, oiled; each piece in its own sleeve, stood on end, never stacked.'),
      ...point(
        'Set-up piece',
        'Set up on the piece that is marked for it.',
        cased !== undefined && 'The coupon is ground to the same depth and read: it decides in a dispute.',
      ),
      ...point('Not good', ...notGood(cased, plated)),
    ],
    finish,
    returns: [...arrivalReadings(visit), ...finishedReturns(finish)],
    cautions: [...operations.flatMap(({ cautions }) => cautions), GRINDING_MIST, ...(plated ? [PLATED_DUST] : [])],
    named: operations.flatMap(({ surfaces, locatedBy }) => [...surfaces, ...locatedBy]),
  }
}

const isHone = ({ process }: OrderedOperation): boolean => process === 'hone'
/** Ground in a chuck, not on a mandrel, between centres or through. */
const isChucked = ({ process, heldIn }: OrderedOperation): boolean => process === 'grind' && heldIn === 'jaws'
const isGrind = ({ process }: OrderedOperation): boolean => process === 'grind'

/** The plating, where it is what this visit cuts. */
const platedIn = ({ source, operations }: Visit): PlatingPlan | undefined =>
  operations.some(
    ({ purpose, surfaces }) => purpose === 'hone-bore' && surfaces.includes(source.plating?.surface ?? ''),
  )
    ? source.plating
    : undefined

function arrival(
  { source, operations }: Visit,
  cased: CasePlan | undefined,
  plated: PlatingPlan | undefined,
): readonly Draft[] {
  const base = source.case
  const [first] = operations
  const cut = source.stock.filter(
    ({ surface, operation }) =>
      operation < (first?.number ?? 0) && operations.some(({ surfaces }) => surfaces.includes(surface)),
  )
  const layerOn = plated && layerAsPlated(plated, 'given')
  return point(
    'Condition on arrival',
    base
      ? say`${source.grade}, ${base.process}: ordered ${base.order?.term ?? 'case'} ${depthOrdered(base, 'given')} and surface about ${surfaceExpected(base, 'given')}, both as hardened. The hardener's certificate comes with the parts.`
      : source.quench
        ? hardThrough(source.grade, source.quench)
        : `${source.grade}, not hardened.`,
    ...(cased
      ? cut.map(
          ({ surface, perSide: { most } }): Said =>
            say`Since then up to ${length('given', `taken off ${surface} a side since hardening`, { most })} a side has come off ${surface}.`,
        )
      : []),
    plated &&
      layerOn &&
      say`${sentence(plated.process)} on ${plated.surface}: ${layerOn} a side. The plater's thickness by piece comes with the parts.`,
    say`Measure each piece on arrival, by its number, ${count('asked', 'angles measured at', { value: 4 })} angles in ${count('asked', 'planes measured in', { value: 2 })} planes.`,
  )
}

/** No case to keep: how hard it is, and how warm it may get. */
const hardThrough = (grade: string, { expected, temper }: QuenchPlan): Said =>
  say`${grade}, hardened through and tempered at ${celsius('given', 'temper', { value: temper })}, about ${hardness('HRC')('given', 'hardness', { value: expected }, { places: 1 })}: it burns and cracks sooner than a nitrided case. The hardener's certificate comes with the parts.`

function setUp(visit: Visit, cased: CasePlan | undefined): readonly (Said | string | false)[] {
  const { operations } = visit
  const several = operations.length > 1
  return [
    ...operations.flatMap(({ name, holding, locatedBy, setTrue, number }): (Said | string)[] => [
      `${several ? `${name}: ${holding}` : sentence(holding)}.`,
      ...(locatedBy.length > 0 && !holds(holding, locatedBy) ? [`Locate by ${listed(locatedBy)}.`] : []),
      ...(setTrue === undefined
        ? []
        : [
            say`Set true within ${length('asked', 'off axis when set, radial', { most: setTrue }, { places: 4, state: `operation ${number}` })} off axis at both ends: a dial shows twice that, and half of an ovality, which is averaged out.`,
          ]),
    ]),
    ...operations.flatMap((operation): Said[] => {
      const most = jawLimit(visit, operation)
      if (most === undefined) return []
      const force = newtons(
        'asked',
        'force of each jaw',
        { most: Math.floor(most / 10) * 10 },
        { state: `operation ${operation.number}` },
      )
      return [
        say`No jaw over ${force}, soft and bored to the seat, or a chuck that presses all round: more leaves lobes that the hone’s stock is not planned for.`,
      ]
    }),
    cased !== undefined &&
      operations.some(isChucked) &&
      'Set on the surface as hardened or as ground, never on old centres.',
  ]
}

/** The holding names the surfaces itself. */
const holds = (holding: string, named: readonly string[]): boolean => named.every(name => holding.includes(name))

function tool(
  { operations }: Visit,
  hard: CasePlan | QuenchPlan | undefined,
  plated: PlatingPlan | undefined,
): readonly (string | false)[] {
  return [
    operations.some(isGrind) &&
      (hard
        ? 'Wheel: aluminium oxide or CBN, soft grade, sharp and freshly dressed. Plenty of coolant, slow infeed, spark out. No dry touch-up, at the ports least of all.'
        : 'Wheel: sharp, freshly dressed, plenty of coolant, spark out. No dry touch-up.'),
    operations.some(isHone) &&
      (plated
        ? `${sentence(plated.honedWith)}.`
        : `${hard ? 'Stones for hardened steel' : 'Stones for the bore’s material'}, honing oil in plenty. No ball hone over ports.`),
    hard !== undefined &&
      'compoundLayer' in hard &&
      operations.some(one => isHone(one) && one.locatedAs === 'turned') &&
      'The bore comes as nitrided, not ground: diamond or CBN through the compound layer, then stop, wash and measure before the finishing stones.',
    operations.some(({ process }) => process === 'lap') &&
      'Ring lap with fine compound, charged once; wash every trace of it off.',
  ]
}

/** What is done at the ports, before plating and after. */
function portEdges({ source, operations }: Visit, plated: PlatingPlan | undefined): readonly Draft[] {
  if (operations.some(({ purpose }) => purpose === 'hone-for-plating'))
    return point('Edges', 'The edges are chamfered for plating: leave the chamfers as they are, no burr, no chip.')
  if (!source.ported) return point('Edges', 'No ports. Break the edges that the cut leaves sharp.')
  if (plated)
    return point(
      'Port edges',
      'Lap the build-up off the port edges before honing. No dwell at the ports; no chip, no lifted layer.',
    )
  const { least, most } = EDGE_BREAK.afterHoning
  return point(
    'Port edges',
    say`Do not dwell at the ports. Deburr every edge by hand afterwards and break it ${length('asked', 'port edges broken', { least, most }, { places: 2 })}; no chip, no bruise.`,
  )
}

/** The temper etch's own standard leaves nitrided surfaces out (ISO 14104:2017, scope). */
function burn(
  operations: readonly OrderedOperation[],
  cased: CasePlan | QuenchPlan | undefined,
): readonly (string | false)[] {
  const ground = operations.some(isGrind)
  const colour = 'No colour of burning, looked at ×10'
  return [
    ground && cased ? `${colour}; a burn may be polished over at spark-out.` : `${colour}.`,
    cased !== undefined &&
      ground &&
      ('order' in cased && isNitrided(cased)
        ? 'No temper etch: its standard leaves nitrided parts out. Compare by Barkhausen noise with a good and a burnt piece where you have it.'
        : 'Temper etch to ISO 14104 after grinding, before any honing; agree the class.'),
  ]
}

function notGood(cased: CasePlan | undefined, plated: PlatingPlan | undefined): readonly (Said | string | false)[] {
  const apart = 'is reported and kept apart, not shipped as good.'
  const left = cased && surfaceLeft(cased, 'asked')
  return [
    `A piece that does not clean up, or is off size, ${apart}`,
    cased !== undefined &&
      (left
        ? say`So is a batch whose coupon, ground along, is left with under ${depthLeft(cased, 'asked')} of case or under ${left}.`
        : say`So is a batch whose coupon, ground along, is left with under ${depthLeft(cased, 'asked')} of case.`),
    plated !== undefined &&
      (plated.asked.most === undefined
        ? say`So is one with under ${layerLeft(plated, 'asked')} of plating left a side, or one that flakes.`
        : say`So is one with other than ${layerLeft(plated, 'asked')} of plating left a side, or one that flakes.`),
  ]
}

/** Each surface that is cut, as it was found. */
function arrivalReadings({ source, operations }: Visit): Drafted['returns'] {
  const cut = source.ladders.filter(({ surface }) => operations.some(({ surfaces }) => surfaces.includes(surface)))
  return [...new Set(cut.map(sizeLabel))].map(label => ({
    ...length('given', label, {}, { state: 'found' }),
    of: 'piece',
    readings: source.batch.start,
  }))
}
