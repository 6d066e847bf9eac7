import type { BoredJaws } from '../handbook/holding.ts'
import type { Part } from '../part/part.ts'
import { drilledBore } from '../route/drilled-bore.ts'
import { isNarrowRecess, roughedWith } from '../route/running-band.ts'
import type { Shape } from '../shape.ts'
import type { Millimetre } from '../units.ts'
import { centresIn, type Held, inChuckings } from './chuckings.ts'
import type { CuttingTask, PlannedCuts } from './cutting-task.ts'
import { turnFeatures } from './feature-turning.ts'
import { finishBore, finishFace, finishOutside, springsWithin } from './finish-turning.ts'
import { plunge } from './groove-cutting.ts'
import { gripAgainst, type JawGrip, type Loaded } from './jaw-grip.ts'
import type { Step } from './step.ts'
import { type BandCut, boreCuts, faceCuts, outsideCuts } from './turned-cuts.ts'

/** Faces, bores and turns to the last soft size: a semi-finishing cut where there is stock for it, then two equal passes. */
export const finishTurn = (task: CuttingTask): PlannedCuts => inChuckings(finishHeld(task))

/**
 * What must run true together is cut in one clamping: top face, bore and the bands above the seat in jaws on the seat; then the
 * bottom face and the rest of the outside on a mandrel in that bore, between centres, or turned round in jaws.
 */
export function finishHeld(task: CuttingTask): readonly Held[] {
  const { before, after, part, operation, shop } = task
  const isPlunged = ({ feature }: BandCut): boolean => isNarrowRecess(part, feature) && isBetween(part, feature)
  const lands = (cuts: readonly BandCut[]): readonly BandCut[] => cuts.filter(cut => !isPlunged(cut))
  const faces = faceCuts(before, after)
  const [bores, outsides] = [boreCuts(before, after), outsideCuts(before, after)]
  const seat = operation.locatedBy[0] ?? after.outside.at(-1)?.name ?? ''
  const onCentres = part.kind === 'pin'
  const first = onCentres ? [] : outsides.filter(({ feature }) => feature !== seat)
  const inFirst = new Set(first.map(({ feature }) => feature))
  const features = turnFeatures(task)
  const early = (step: Step): boolean => {
    const feature = task.features?.find(({ name }) => name === step.feature)
    return feature !== undefined && (feature.side === 'bore' || inFirst.has(feature.band))
  }
  const plunged = (cuts: readonly BandCut[]) => cuts.filter(isPlunged).flatMap(cut => plungeBand(task, cut))
  const grip = gripOn(before, seat)
  const mouth = grip.bottom - grip.length
  const out = (step: Step, top: Millimetre, diameter: Millimetre): Loaded => ({ step, out: mouth - top, diameter })
  const held: Omit<JawGrip, 'jaws'> = { diameter: grip.diameter, length: grip.length, surface: 'turned' }
  const bored = lands(bores).map(cut => ({ cut, out: mouth - cut.top }))
  const jaws = jawsFor(task, held, bored)
  const top = [
    ...faces
      .filter(({ feature }) => feature === 'top')
      .flatMap(face => finishFace(task, face).map(step => out(step, before.top, face.outside))),
    ...bored.flatMap(({ cut, out }) =>
      finishBore(task, cut, { ...held, jaws, out }).map(step => ({ step, out, diameter: cut.to })),
    ),
    ...lands(first).flatMap(cut => finishOutside(task, cut).map(step => out(step, cut.top, cut.from))),
  ]
  const settled = gripAgainst(task, { ...held, jaws }, top)
  const rest = outsides.filter(({ feature }) => !inFirst.has(feature))
  const bottomFace = faces.filter(({ feature }) => feature === 'bottom').flatMap(face => finishFace(task, face))
  const turned = lands(rest).flatMap(cut => finishOutside(task, cut))
  const late = [...plunged(outsides), ...features.filter(step => !early(step))]
  const onMandrel = after.bore.length > 0 && !drilledBore(part) && !onCentres
  const [uppermost] = after.outside
  return [
    {
      chucking: {
        end: 'top',
        grip: { surface: seat, length: grip.length },
        stop: 'the stop in the chuck, bottom face home',
        heldWith: jaws,
        ...(settled && { jawForce: settled.force }),
        clocking: 'jaws bored in place to the roughed size',
      },
      steps: [...top.map(({ step }) => step), ...plunged(bores), ...features.filter(early)],
    },
    ...(onMandrel
      ? [
          {
            chucking: {
              end: 'bottom',
              grip: { surface: part.bore[0]?.name ?? 'bore', length: after.bottom - after.top },
              stop: "the mandrel's shoulder, top face home",
              heldWith: 'expanding mandrel',
              clocking: `mandrel runs true within ${shop.habits.mandrelRunout} mm off axis`,
            },
            steps: [...bottomFace, ...turned, ...late],
          } as const,
        ]
      : turnedRound({ task, bottomFace, turned, late, held: onCentres ? seat : (uppermost?.name ?? seat) })),
  ]
}

/** Solid parts and pins: the other end in jaws, and a pin's outside end to end between what was cut for centres. */
function turnedRound({
  task: { after, part },
  bottomFace,
  turned,
  late,
  held,
}: {
  readonly task: CuttingTask
  readonly bottomFace: readonly Step[]
  readonly turned: readonly Step[]
  readonly late: readonly Step[]
  readonly held: string
}): readonly Held[] {
  const band = after.outside.find(({ name }) => name === held)
  const length = Math.min(MOST_GRIP, (band?.to ?? 0) - (band?.from ?? 0))
  const pin = part.kind === 'pin'
  return [
    {
      chucking: {
        end: 'bottom',
        grip: { surface: held, length },
        stop: 'the stop in the chuck, top face home',
        heldWith: 'bored soft jaws',
        clocking: 'jaws bored in place to the finished size',
      },
      steps: [...bottomFace, ...(pin ? [] : [...turned, ...late])],
    },
    {
      chucking: {
        end: 'bottom',
        grip: { surface: centresIn(part), length: 0 },
        stop: 'the live centre, driven by the end face',
        heldWith: 'centres',
        clocking: 'centres cleaned; runs with them',
      },
      steps: pin ? [...turned, ...late] : [],
    },
  ]
}

/** Jaws are seldom longer. Common practice, no source. */
const MOST_GRIP: Millimetre = 40

/** The lower part of a band, as far as jaws reach. */
function gripOn({ outside }: Shape, name: string) {
  const band = outside.find(known => known.name === name) ?? outside.at(-1)
  const [from, to] = [band?.from ?? 0, band?.to ?? 1]
  return { diameter: band?.diameter ?? 1, bottom: to, length: Math.min(MOST_GRIP, to - from) }
}

/**
 * Pie jaws press nearly all round: they hold a wall that is thin for the diameter held (common practice, no source), and one
 * that soft jaws would spring too far in the last cuts.
 */
function jawsFor(
  task: CuttingTask,
  held: Omit<JawGrip, 'jaws'>,
  bored: readonly { readonly cut: BandCut; readonly out: Millimetre }[],
): BoredJaws {
  const { before, after } = task
  if (before.bore.length === 0) return 'bored soft jaws'
  const widest = Math.max(0, ...after.bore.map(band => band.diameter))
  const thin = widest > 0 && (held.diameter - widest) / 2 < PIE_UNDER * held.diameter
  const soft = { ...held, jaws: 'bored soft jaws' } as const
  return thin || !bored.every(({ cut, out }) => springsWithin(task, cut, { ...soft, out })) ? 'pie jaws' : soft.jaws
}
const PIE_UNDER = 0.08

/** A narrow recess between two bands takes a grooving tool, once they are finished; one at the mouth takes the boring bar. */
const isBetween = ({ outside, bore }: Part, name: string): boolean =>
  [outside, bore].some(bands => bands.slice(1, -1).some(band => band.name === name))

function plungeBand(task: CuttingTask, cut: BandCut): readonly Step[] {
  const beside = roughedWith(task.part, cut.feature)
  const land = [...task.after.outside, ...task.after.bore].find(({ name }) => name === beside)?.diameter ?? cut.from
  const half = WIDTH / 2
  return plunge(task, {
    name: cut.feature,
    width: { lower: cut.length - half, upper: cut.length + half },
    place: { deep: Math.abs(land - cut.to) / 2, side: cut.kind, diameter: land },
    path: '/body',
  })
}

/** Between two depths each with its own tolerance: a width that one plunge holds. */
const WIDTH: Millimetre = 0.2
