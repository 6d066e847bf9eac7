import { clampedByHand } from '../../clamped-by-hand.ts'
import { angle, area, signed } from '../../figures.ts'
import type { Plan } from '../../plan/plan.ts'
import type { PlannedPort, PortWindow } from '../../ports/port.ts'
import { cureLines, type EdgeRow, edgeRows } from './edge-rows.ts'
import { type FixtureView, fixtureView, inOrder, type NamedWindow } from './fixture-view.ts'
import { type GasView, gasView } from './gas-view.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

export type PortsView = FixtureView & {
  readonly gas: GasView
  readonly unit: string
  /** Which way is positive, where zero is. */
  readonly axes: readonly string[]
  readonly settings: readonly {
    readonly window: string
    /** Where it is seen from the head, azimuth 0 at 12. */
    readonly clock: string
    readonly rotary: string
    readonly tilt: string
    readonly x: string
    readonly y: string
    readonly z: string
    /** A line for each end mill, in the order of cutting: how far it sticks out, the limits of its middle. */
    readonly mills: readonly string[]
    readonly hole: string
    readonly holeX: string
    readonly holeY: string
  }[]
  readonly edges: readonly {
    readonly window: string
    readonly cutTop: string
    readonly cutBottom: string
    readonly top: string
    readonly bottom: string
    readonly width: string
  }[]
  /** Timing edges, and what closes their chains. */
  readonly timingEdges: readonly EdgeRow[]
  readonly cures: readonly string[]
  readonly timed: boolean
  readonly timings: readonly {
    readonly port: string
    readonly opens: string
    readonly closes: string
    readonly duration: string
    readonly perTenth: string
    readonly window: string
    readonly flow: string
  }[]
  /** Pictures by name, as many as were drawn, two beside each other. */
  readonly drawn: readonly { readonly left: string; readonly right: string }[]
}

export function portsView(plan: Plan, figures: PaperFigures, pictures: Iterable<string>): PortsView {
  const { length, unit } = figures
  return {
    unit,
    ...fixtureView(plan, figures),
    gas: gasView(plan),
    axes: axesOf(plan, figures),
    settings: inOrder(plan).map(named => {
      const { name, window, step, asCut } = named
      return {
        window: name,
        clock: step?.clock ?? DASH,
        rotary: signed(angle(window.rotary, 3)),
        tilt: signed(angle(window.tilt, 3)),
        x: signed(length(window.x)),
        y: signed(length(window.crossOffset)),
        z: signed(length(window.z)),
        mills: millLines(plan, named, figures),
        ...holeOf(window, asCut?.hole === false ? undefined : length),
      }
    }),
    edges: inOrder(plan).map(({ name, window }) => ({
      window: name,
      ...edgesOf(window, length),
      width: length(window.width, 2),
    })),
    timingEdges: edgeRows(plan, figures),
    cures: cureLines(plan, figures),
    timed: plan.ports.some(({ opens, bySkirt }) => opens !== undefined || bySkirt !== undefined),
    timings: plan.ports.map(port => ({
      port: port.name,
      ...timingOf(port),
      perTenth: port.dAnglePerTenth === undefined ? DASH : angle(port.dAnglePerTenth, 2),
      window: area(port.area.window),
      flow: area(port.area.flow),
    })),
    drawn: inPairs(['plan-view', ...[...pictures].filter(name => /^fixture(-|$)/.test(name))]),
  }
}

const inPairs = (names: readonly string[]): PortsView['drawn'] =>
  names.flatMap((left, index) => (index % 2 === 0 ? [{ left, right: names[index + 1] ?? '' }] : []))

/** `end mill 3 sticks out 22.0: X +27.050 to +40.172, Y +2.789 to +12.011` */
function millLines({ setUps }: Plan, { is, window, asCut }: NamedWindow, { length }: PaperFigures): readonly string[] {
  const lines = setUps.flatMap(({ tool, stickOut, work, windows }) => {
    const here = windows.find(
      ({ port, at, window: number }) => port === is.port && at === is.at && number === is.window,
    )
    if (!here || work === 'drill entry holes') return []
    const { limits } = here
    const from = limits
      ? `: X ${signed(length(limits.x[0]))} to ${signed(length(limits.x[1]))}, Y ${signed(length(limits.y[0]))} to ${signed(length(limits.y[1]))}`
      : ''
    return [`${tool}, sticks out ${stickOut === undefined ? DASH : length(stickOut, 1)}${from}`]
  })
  if (lines.length > 0) return lines
  return (asCut?.mills ?? [{ diameter: window.cutter }]).map(({ diameter }) => `cutter Ø ${length(diameter, 2)}`)
}

function holeOf(
  { entryHole }: PortWindow,
  length: PaperFigures['length'] | undefined,
): { readonly hole: string; readonly holeX: string; readonly holeY: string } {
  return length
    ? { hole: length(entryHole.diameter, 2), holeX: signed(length(entryHole.x)), holeY: signed(length(entryHole.y)) }
    : { hole: DASH, holeX: DASH, holeY: DASH }
}

/** An inlet by the skirt is open about top dead centre: counted before and after it. */
const timingOf = ({
  opens,
  closes,
  duration,
  bySkirt,
}: PlannedPort): { opens: string; closes: string; duration: string } =>
  bySkirt
    ? {
        opens: `${angle(bySkirt.opensBefore, 1)} before`,
        closes: angle(bySkirt.closesAfter, 1),
        duration: angle(bySkirt.duration, 1),
      }
    : { opens: orDash(opens), closes: orDash(closes), duration: orDash(duration) }

const orDash = (degree: number | undefined): string => (degree === undefined ? DASH : angle(degree, 1))

function edgesOf({ edges: { asCut, finished } }: PortWindow, length: PaperFigures['length']) {
  return {
    cutTop: length(asCut.highest),
    cutBottom: length(asCut.lowest),
    top: length(finished.highest),
    bottom: length(finished.lowest),
  }
}

function clampingWords(words: Plan['shop']['ncWords'] = {}): readonly string[] {
  const axes = clampedByHand(words)
  if (axes.length === 0) return []
  return [
    `Programs stop before and after every turn of the ${axes.join(' and the ')}, to be freed and clamped by hand.`,
  ]
}

function axesOf({ shop }: Plan, { length, unit }: PaperFigures): readonly string[] {
  const { fixture } = shop
  if (!fixture) return []
  return [
    `Zero is the tilt pivot. The cutter points along −Z; the rotary axis lies along X at zero tilt.`,
    `Head faces ${fixture.headFaces}. Top face at X ${length(fixture.faceDistance)} ${unit}, rotary centre ${length(fixture.pivotHeight)} ${unit} above the pivot, both at zero tilt.`,
    ...(shop.ncWords?.tiltAxis === undefined
      ? []
      : [
          `Tilt ° is of the part, positive Z to X. Tilt axis ${shop.ncWords.tiltAxis} counts positive ${fixture.positiveTilt}.`,
        ]),
    ...clampingWords(shop.ncWords),
    `Positive rotary turns ${fixture.positiveRotary}. At zero rotary the 12 o’clock mark of the part, seen from the head, points up.`,
  ]
}
