import type { PlannedPort } from '../ports/port.ts'
import type { CuttingPlan } from './plan-cutting.ts'
import type { SetUp } from './set-up.ts'

/**
 * Ports as the milling leaves them: only with the tools that cut them, since a drill that was weighed where the cutter then
 * ramps down stands in no spindle, and with what moves each round the bore.
 */
export function portsAsCut(
  ports: readonly PlannedPort[],
  { setUps, places }: Pick<CuttingPlan, 'setUps' | 'places'>,
): readonly PlannedPort[] {
  return withTools(ports, setUps).map(port => {
    const placed = places.find(({ name, at }) => name === port.name && at === port.at)
    return placed ? { ...port, place: placed.place } : port
  })
}

function withTools(ports: readonly PlannedPort[], setUps: readonly SetUp[]): readonly PlannedPort[] {
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
