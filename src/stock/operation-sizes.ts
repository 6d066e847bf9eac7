import type { Band } from '../band.ts'
import { between, type DrawnSize, type Limits } from '../limits.ts'
import type { OperationSize } from '../operation-size.ts'
import type { Part } from '../part/part.ts'
import type { AxialLocator, Operation } from '../route/operation.ts'
import { isNarrowRecess } from '../route/running-band.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import type { AxialSizes } from './axial-sizes.ts'
import { isRoughed, roughDepth, roughedTo, roughLimits } from './rough-sizes.ts'
import { grown, type SolvedChain } from './solve-chain.ts'

export type Sized = {
  readonly part: Part
  readonly shop: Shop
  /** Diameters, and the top face when it is ground. */
  readonly chains: readonly SolvedChain[]
  readonly axial: AxialSizes
  /** The plated bore from its plated size on. */
  readonly plated?: SolvedChain
}

/** The sizes of every operation that changes one, as they must measure when it is done. The saw's are the batch's. */
export function operationSizes(
  sized: Sized,
  operations: readonly Operation[],
): ReadonlyMap<number, readonly OperationSize[]> {
  return new Map(
    operations.flatMap(operation => {
      const sizes = sizesAfter(sized, operation)
      return sizes.length > 0 ? [[operation.number, sizes] as const] : []
    }),
  )
}

function sizesAfter(sized: Sized, operation: Operation): readonly OperationSize[] {
  switch (operation.purpose) {
    case 'rough-turn':
      return roughSizes(sized)
    case 'finish-turn':
      return softSizes(sized)
    case 'turn':
      return [...drilledSizes(sized), ...softSizes(sized)]
    case 'nitride':
    case 'case-harden':
    case 'induction-harden':
      return hardenedSizes(sized)
    case 'plate':
      return platedSizes(sized)
    case 'grind-outside':
    case 'grind-bore':
    case 'grind-top':
    case 'hone-for-plating':
    case 'hone-bore':
    case 'lap-outside':
      return finishedSizes(sized, operation)
    case 'final-inspection':
      return drawnSizes(sized)
    default:
      return []
  }
}

const diameters = ({ chains }: Sized): readonly SolvedChain[] => chains.filter(({ chain }) => chain.kind !== 'face')

const inProcess = (
  feature: string,
  measure: OperationSize['measure'],
  { lower, upper }: Limits,
  drawn: DrawnSize | undefined,
): OperationSize => ({ feature, measure, ...between(lower, upper), ...(drawn && { drawn: drawn.written }) })

function roughSizes(sized: Sized): readonly OperationSize[] {
  const { shop, axial, part } = sized
  return [
    ...diameters(sized)
      .filter(({ chain }) => !isNarrowRecess(part, chain.surface))
      .map(solved => inProcess(solved.chain.surface, 'diameter', roughedTo(sized, solved), solved.chain.band?.size)),
    inProcess('length', 'length', roughLimits(axial.softLength, false, shop), part.length),
    ...axial.steps
      .filter(step => isRoughed(part, step))
      .flatMap(({ band, looks }) => {
        const soft = axial.softDepth.get(band.name)
        return soft ? [inProcess(band.name, 'depth', roughDepth(soft, looks, shop), band.to)] : []
      }),
  ]
}

/** What stays as it was drilled in roughing. */
const drilledSizes = (sized: Sized): readonly OperationSize[] =>
  diameters(sized)
    .filter(({ chain }) => chain.drilled)
    .map(({ chain, soft }) => inProcess(chain.surface, 'diameter', soft, chain.band?.size))

function softSizes(sized: Sized): readonly OperationSize[] {
  const { axial, part } = sized
  return [
    ...diameters(sized)
      .filter(({ chain }) => !chain.drilled)
      .flatMap(solved =>
        solved.chain.finishes.length > 0
          ? [inProcess(solved.chain.surface, 'diameter', solved.soft, solved.chain.band?.size)]
          : asTurned(solved),
      ),
    inProcess('length', 'length', axial.softLength, part.length),
    ...axial.steps.flatMap(({ band }) => {
      const soft = axial.softDepth.get(band.name)
      return soft ? [inProcess(band.name, 'depth', soft, band.to)] : []
    }),
  ]
}

/** A surface that stays as turned shows the drawing's nominal and roughness. */
function asTurned({ chain, soft }: SolvedChain): readonly OperationSize[] {
  const { band } = chain
  if (!band) return []
  return bandSizes(band, soft, chain.kind === 'bore')
}

function hardenedSizes(sized: Sized): readonly OperationSize[] {
  const { axial, part } = sized
  return [
    ...diameters(sized).map(({ chain, soft, growth }) =>
      inProcess(chain.surface, 'diameter', grown(soft, chain.kind, growth), chain.band?.size),
    ),
    inProcess('length', 'length', axial.hardenedLength, part.length),
  ]
}

function finishedSizes(sized: Sized, operation: Operation): readonly OperationSize[] {
  const { plated } = sized
  const round = [...diameters(sized), ...(plated ? [plated] : [])].flatMap(solved => {
    const { chain, after } = solved
    const index = chain.finishes.findIndex(finish => finish.operation === operation)
    const limits = after[index]
    if (!limits) return []
    const last = index === chain.finishes.length - 1
    if (operation.purpose === 'hone-for-plating') {
      const rough = chain.band?.roughness === undefined ? {} : { roughness: chain.band.roughness }
      return [{ ...inProcess(chain.surface, 'diameter', limits, chain.band?.size), nominal: limits.nominal, ...rough }]
    }
    return last && chain.band
      ? bandSizes(chain.band, chain.band.size, chain.kind === 'bore')
      : [inProcess(chain.surface, 'diameter', limits, chain.band?.size)]
  })
  return [...round, ...(operation.axialLocator ? topSizes(sized, operation.axialLocator) : [])]
}

function platedSizes({ plated }: Sized): readonly OperationSize[] {
  if (!plated) return []
  const { chain, soft } = plated
  return [{ ...inProcess(chain.surface, 'diameter', soft, chain.band?.size), nominal: soft.nominal }]
}

/** The dimension that the top face is ground to: over all, or from the underside that locates it. */
function topSizes({ part, axial }: Sized, locator: AxialLocator): readonly OperationSize[] {
  const roughness = part.top.roughness === undefined ? {} : { roughness: part.top.roughness }
  if (locator.face === 'bottom') {
    return [{ feature: 'length', measure: 'length', ...axial.finishedLength, drawn: part.length.written, ...roughness }]
  }
  const depth = axial.finishedDepth.get(locator.band)
  const band = part.outside.find(({ name }) => name === locator.band)
  return depth && band ? [{ feature: band.name, measure: 'depth', ...depth, drawn: band.to.written, ...roughness }] : []
}

/** One size; two for a bore closer at the top. */
function bandSizes(band: Band, limits: Limits, inside: boolean): readonly OperationSize[] {
  const { name, size, taper = 0, roughness } = band
  const row = (at: Limits, edge?: OperationSize['edge']): OperationSize => ({
    feature: name,
    measure: 'diameter',
    nominal: at.nominal,
    lower: at.lower,
    upper: at.upper,
    drawn: size.written,
    ...(edge && { edge }),
    ...(roughness !== undefined && { roughness }),
  })
  if (!inside || taper === 0) return [row(limits)]
  return [row(lessBy(limits, taper), 'top'), row(limits, 'bottom')]
}

const lessBy = ({ nominal, lower, upper }: Limits, by: Millimetre): Limits => ({
  nominal: nominal - by,
  lower: lower - by,
  upper: upper - by,
})

function drawnSizes({ part, axial }: Sized): readonly OperationSize[] {
  const along = (feature: string, measure: 'length' | 'depth', { written, ...size }: DrawnSize): OperationSize => ({
    feature,
    measure,
    nominal: size.nominal,
    lower: size.lower,
    upper: size.upper,
    drawn: written,
  })
  return [
    ...part.outside.flatMap(band => bandSizes(band, band.size, false)),
    ...part.bore.flatMap(band => bandSizes(band, band.size, true)),
    along('length', 'length', part.length),
    ...axial.steps.map(({ band }) => along(band.name, 'depth', band.to)),
  ]
}
