import { PIECE } from '../part/results.ts'
import type { Degree, Millimetre } from '../units.ts'
import type { IssuedPlan } from './characteristic-of.ts'
import { hardeningOf } from './in-hand.ts'
import type { Judged } from './judge-results.ts'

export type FaceVerdict = 'edge put right' | 'held by the length' | 'edge out of its limits'

/** What comes off the top face of one piece. */
export type FaceTurn = {
  readonly serial: string
  /** Depth of the edge below the top face as it then stood. */
  readonly edge: Millimetre
  /** Overall length to grind to, and what comes off for it where the length after hardening was measured. */
  readonly length: Millimetre
  readonly off?: Millimetre
  /** Where the finished edge then lies, and how much sooner than drawn it opens. */
  readonly comes: Millimetre
  readonly sooner?: Degree
  readonly verdict: FaceVerdict
  /** The least that must go for the face to clean up is not there. */
  readonly thin?: true
  readonly assumed: readonly string[]
}

/** The top face of every piece, ground so that the edge that times the engine comes where it is wanted. */
export type FaceList = {
  readonly operation: number
  readonly port: string
  /** Depth of the finished edge that is aimed at, and what it may be. */
  readonly wanted: Millimetre
  readonly allowed: { readonly lower: Millimetre; readonly upper: Millimetre }
  /** What the length may be made to. */
  readonly length: { readonly lower: Millimetre; readonly upper: Millimetre }
  readonly turns: readonly FaceTurn[]
}

/**
 * The length to grind each piece to. Length and edge hang together: the bottom of the piece to its edge stays, so that a piece milled
 * 0.03 deep and turned 0.01 long is ground 0.02 shorter. From the chain of the plan, with what was measured in the place of its
 * nominals. Nothing where no operation grinds the top face to a length from the bottom, or no edge was measured.
 */
export function faceList(plan: IssuedPlan, judged: readonly Judged[]): FaceList | undefined {
  const timed = plan.ports.filter(({ edge }) => edge !== undefined)
  const port = timed.find(({ role }) => role === 'exhaust') ?? timed[0]
  const face = plan.stock.find(({ surface, kind }) => surface === 'top' && kind === 'face')
  const cut = plan.axial?.dimensions ?? []
  const ground = cut.find(
    ({ operation, from, to }) => operation === face?.operation && from === 'bottom' && to === 'top',
  )
  const turned = cut.findLast(
    ({ operation, from, to }) => operation < (face?.operation ?? 0) && from === 'top' && to === 'bottom',
  )
  const milled = cut.find(({ from, to }) => from === 'top' && to === `${port?.name}, top edge`)
  if (!port?.edge || !face || !ground || !turned || !milled) return undefined
  const { allowed, nominal } = port.edge
  // In the middle of what it may be; where the drawing has it follows from the timing.
  const wanted = allowed.nominal
  const lengths = read(judged, 'length')
  const edges = new Map(
    judged
      .filter(
        ({ feature, name, after }) => feature === port.name && after === milled.operation && name.endsWith('top edge'),
      )
      .map(({ serial, form }) => [serial, form.mean]),
  )
  const done = new Set(judged.filter(({ after }) => after >= face.operation).map(({ serial }) => serial))
  const hardened = hardeningOf(plan)
  const turns = [...edges].flatMap(([serial, edge]): readonly FaceTurn[] => {
    if (!PIECE.test(serial) || done.has(serial)) return []
    const asTurned = lengths(serial, turned.operation)
    const back = hardened === undefined ? asTurned : lengths(serial, hardened)
    const stands =
      nominal + (edge - milled.limits.nominal) - ((asTurned ?? turned.limits.nominal) - turned.limits.nominal)
    const asked = ground.limits.nominal + wanted - stands
    const length = Math.min(ground.limits.upper, Math.max(ground.limits.lower, asked))
    const comes = stands + length - ground.limits.nominal
    const off = back === undefined ? undefined : back - length
    const inside = comes >= allowed.lower - 1e-9 && comes <= allowed.upper + 1e-9
    return [
      {
        serial,
        edge,
        length,
        ...(off !== undefined && { off }),
        comes,
        ...(port.dAnglePerTenth !== undefined && { sooner: ((wanted - comes) / 0.1) * port.dAnglePerTenth }),
        verdict: inside
          ? Math.abs(length - asked) < 1e-9
            ? 'edge put right'
            : 'held by the length'
          : 'edge out of its limits',
        ...(off !== undefined && off < face.perSide.needed - 1e-9 && { thin: true as const }),
        assumed: [
          ...(asTurned === undefined ? ['length turned as planned'] : []),
          ...(back === undefined ? ['length not measured since'] : []),
        ],
      },
    ]
  })
  if (turns.length === 0) return undefined
  return {
    operation: face.operation,
    port: port.name,
    wanted,
    allowed: { lower: allowed.lower, upper: allowed.upper },
    length: { lower: ground.limits.lower, upper: ground.limits.upper },
    turns: turns.toSorted((one, other) => one.serial.localeCompare(other.serial, 'en', { numeric: true })),
  }
}

const read =
  (judged: readonly Judged[], feature: string) =>
  (serial: string, after: number): Millimetre | undefined =>
    judged.find(one => one.serial === serial && one.feature === feature && one.after === after && one.unit === 'mm')
      ?.form.mean
