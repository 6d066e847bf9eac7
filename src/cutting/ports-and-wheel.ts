import { PORTED_BORE } from '../handbook/grinding-data.ts'
import { landShare } from '../handbook/honing.ts'
import { told, worked } from '../known.ts'
import type { PlannedPort } from '../ports/port.ts'
import type { Millimetre } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'
import { figure } from './figure.ts'
import type { BandCut } from './turned-cuts.ts'
import { AS_CUT } from './where-from.ts'

/** The stretch of the bore that has ports in it. */
export type Belt = {
  readonly top: Millimetre
  readonly bottom: Millimetre
  readonly height: Millimetre
  /** Of that the depths where a window is: the land that goes right round between two rows is left out. */
  readonly ported: Millimetre
  readonly tallest: Millimetre
  /** Chords of all windows that cross the depth where most do. */
  readonly width: Millimetre
}

/** The belt of ports over a band of the bore; nothing where it has none. */
export function portBelt(ports: readonly PlannedPort[], cut: Pick<BandCut, 'top' | 'bottom'>): Belt | undefined {
  const here = ports.filter(({ top, bottom }) => bottom > cut.top && top < cut.bottom)
  if (here.length === 0) return undefined
  const top = Math.min(...here.map(port => port.top))
  const bottom = Math.max(...here.map(port => port.bottom))
  const widthAt = (depth: Millimetre): Millimetre =>
    here
      .filter(port => port.top <= depth && port.bottom > depth)
      .flatMap(({ windows }) => windows.map(({ width }) => width))
      .reduce((sum, width) => sum + width, 0)
  return {
    top,
    bottom,
    height: bottom - top,
    ported: portedDepths(here),
    tallest: Math.max(...here.map(({ height }) => height)),
    width: Math.max(...here.map(port => widthAt(port.top))),
  }
}

function portedDepths(ports: readonly PlannedPort[]): Millimetre {
  let covered = 0
  let reached = Number.NEGATIVE_INFINITY
  for (const { top, bottom } of ports.toSorted((a, b) => a.top - b.top)) {
    covered += Math.max(0, bottom - Math.max(top, reached))
    reached = Math.max(reached, bottom)
  }
  return covered
}

/** Rules of a wheel that runs over ports: wide enough to bridge them, and never turning back beside one. */
export function watchPorts(task: CuttingTask, cut: BandCut, width: Millimetre): void {
  const belt = portBelt(task.ports, cut)
  if (!belt) return
  const given = {
    ...told(worked('width of all ports at their height'), { w: belt.width }),
    ...told(AS_CUT, { d: cut.to }),
  }
  task.notebook.use(landShare, given, { operation: task.operation.number, about: 'ports' })
  const least = PORTED_BORE.wheelOverPort * belt.tallest
  if (width < least) {
    task.report({
      code: 'cutting/wheel-and-ports',
      severity: 'warning',
      message: `the wheel is ${figure(width)} mm wide; over a port of ${figure(belt.tallest)} mm it should be ${figure(least)} mm or it dips in`,
      hint: 'mount a wider wheel where the machine allows, or more spark-out and a lighter last pass',
      path: '/ports',
    })
  }
  const inside = (1 - PORTED_BORE.overrun) * width + PORTED_BORE.reversalFromPort
  const near = [
    { end: 'top', away: belt.top - (cut.top + inside) },
    { end: 'bottom', away: cut.bottom - inside - belt.bottom },
  ].filter(({ away }) => away < 0)
  for (const { end } of near) {
    task.report({
      code: 'cutting/port-at-reversal',
      severity: 'warning',
      message: `where the wheel turns back at the ${end}, it still stands within ${PORTED_BORE.reversalFromPort} mm of a port`,
      hint: 'treat the port as the end: set the reversal clear of it, with less overrun',
      path: '/ports',
    })
  }
}
