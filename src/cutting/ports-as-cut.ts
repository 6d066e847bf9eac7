import type { PlannedPort } from '../ports/port.ts'
import type { SetUp } from './set-up.ts'

/** Ports with only the tools that cut them: a drill that was weighed where the cutter then ramps down stands in no spindle. */
export function portsAsCut(ports: readonly PlannedPort[], setUps: readonly SetUp[]): readonly PlannedPort[] {
  if (setUps.length === 0) return ports
  const drilled = new Set(
    setUps.flatMap(({ windows }) =>
      windows.flatMap(({ port, at, window, cuts }) =>
        cuts.some(({ kind }) => kind === 'drill') ? [`${port} ${at} ${window}`] : [],
      ),
    ),
  )
  return ports.map(port => ({
    ...port,
    windows: port.windows.map((window, i) => {
      if (drilled.has(`${port.name} ${port.at} ${i + 1}`)) return window
      const { drillHeld: _, ...without } = window
      return without
    }),
  }))
}
