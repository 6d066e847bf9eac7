import type { PlannedPort, PortWindow } from './port.ts'

/** One window in the order of cutting. */
export type OrderedWindow = {
  readonly port: PlannedPort
  readonly window: PortWindow
  /** Which of its port's windows, counted from 1. */
  readonly number: number
}

/** Fewest changes of tilt, the flattest first; at each tilt the rotary goes one way, and the other way at the next. */
export function orderedWindows(ports: readonly PlannedPort[]): readonly OrderedWindow[] {
  const all = ports.flatMap(port => port.windows.map((window, i) => ({ port, window, number: i + 1 })))
  const tilts = [...new Set(all.map(({ window }) => window.tilt))].toSorted(
    (a, b) => Math.abs(a) - Math.abs(b) || a - b,
  )
  return tilts.flatMap((tilt, i) => {
    const way = i % 2 === 0 ? 1 : -1
    return all
      .filter(({ window }) => window.tilt === tilt)
      .toSorted((a, b) => way * (a.window.rotary - b.window.rotary) || a.number - b.number)
  })
}

/** `exhaust`, or `exhaust, window 1 of 2`. */
export const windowName = ({ port, number }: Pick<OrderedWindow, 'port' | 'number'>): string =>
  port.windows.length > 1 ? `${port.name}, window ${number} of ${port.windows.length}` : port.name
