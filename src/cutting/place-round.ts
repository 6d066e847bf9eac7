import { fixed } from '../figures.ts'
import { sidePerRotary } from '../handbook/pick-up.ts'
import { PORT_PLACE } from '../handbook/port-inspection.ts'
import { offsetAngle, ROTARY_INDEX, Y_PICKED_UP } from '../handbook/timing-datums.ts'
import { fromPart, told, worked } from '../known.ts'
import type { PlaceRound } from '../ports/edge-plan.ts'
import type { PlannedPort } from '../ports/port.ts'
import { orderedWindows } from '../ports/window-order.ts'
import type { Degree, Millimetre } from '../units.ts'
import type { Clocking } from './clocking.ts'
import type { CuttingTask } from './cutting-task.ts'
import { PRACTICE } from './where-from.ts'

/** A port by name and azimuth, with what moves it round the bore. */
export type PlacedPort = Pick<PlannedPort, 'name' | 'at'> & { readonly place: PlaceRound }

/**
 * What moves each port round the bore, either way: the clocking of every loading that lies between it and what its place is
 * measured from, the rotary at both, and Y where it may have been picked up between them.
 */
export function placesRound(task: CuttingTask, clocking: Clocking): readonly PlacedPort[] {
  const { datum } = clocking
  const [first] = task.ports
  const from = datum?.drawn ? ({ name: datum.name, loading: datumLoading(clocking) } as const) : undefined
  const start = from ?? (first && { name: first.name, loading: loadingOf(task, clocking, first) })
  if (!start) return []
  return task.ports.flatMap(port => {
    if (!from && port === first) return []
    const place = placeOf(task, clocking, port, start)
    report(task, port, place)
    return [{ name: port.name, at: port.at, place }]
  })
}

type Start = { readonly name: string; readonly loading: number }

/** In its own clamping the datum is made before the first pass; else it is cut in it, and so is a window that carries a key. */
const datumLoading = ({ datum }: Clocking): number => (datum?.clamping === 'of its own' ? -1 : 0)

/** Which loading of the piece cuts the port: one pass for each tilt, or one for all. */
function loadingOf({ ports }: CuttingTask, { way }: Clocking, port: PlannedPort): number {
  if (way !== 'the batch at each tilt') return 0
  const tilts = [...new Set(orderedWindows(ports).map(({ window }) => window.tilt))]
  return tilts.indexOf(port.windows[0]?.tilt ?? 0)
}

function placeOf(task: CuttingTask, clocking: Clocking, port: PlannedPort, start: Start): PlaceRound {
  const { notebook, operation } = task
  const { datum } = clocking
  const r = port.windows[0]?.walls.finished ?? 0
  const about = { operation: operation.number, about: `${port.name}, place round the bore` }
  const radius = told(worked('bore, finished'), { r })
  const own = loadingOf(task, clocking, port)
  const made = datumLoading(clocking)
  // Each loading but the one that cuts the datum is off by as much, either way and apart from the others.
  const loadings = own === start.loading ? [] : [own, start.loading].filter(loading => loading !== made)
  const again = own !== start.loading
  const angles: readonly (readonly [string, Degree])[] = [
    ...(datum ? loadings.map((loading): [string, Degree] => [clockedAt(loading, own, port, start), datum.angle]) : []),
    [`rotary at ${port.name}`, ROTARY_INDEX],
    [`rotary at ${start.name}`, ROTARY_INDEX],
    ...(again
      ? [
          [
            'Y picked up',
            notebook.use(
              offsetAngle,
              {
                ...told(PRACTICE, { dY: Y_PICKED_UP }),
                ...radius,
                ...told(fromPart(`${port.name}, back`), { psi: port.back }),
              },
              about,
            ),
          ] as const,
        ]
      : []),
  ]
  const along = (dA: Degree): Millimetre => sidePerRotary.value({ r, dA })
  const both = (angle: Degree) => ({ angle, side: along(angle) })
  const worst = angles.reduce((sum, [, angle]) => sum + angle, 0)
  const root = Math.hypot(...angles.map(([, angle]) => angle))
  const sum = angles.map(([, angle]) => fixed(angle, 4))
  const note = (symbol: string, meaning: string, value: Degree, expression: string): void =>
    notebook.note({ ...about, symbol, meaning, value, unit: 'deg', expression, source: 'derived: sum of its members' })
  note('W', `off from ${start.name}, every member at its limit`, worst, sum.join(' + '))
  note('Q', 'the same, root of the sum of squares', root, `sqrt(${sum.map(one => `${one}^2`).join(' + ')})`)
  const side = notebook.use(sidePerRotary, { ...radius, ...told(worked('sum of the members'), { dA: worst }) }, about)
  return {
    from: start.name,
    members: angles.map(([name, angle]) => ({ name, angle, side: along(angle) })),
    worstCase: { angle: worst, side },
    rootSumSquare: both(root),
    allowed: both(PORT_PLACE.deviation),
  }
}

const clockedAt = (loading: number, own: number, port: PlannedPort, start: Start): string =>
  `clocking for ${loading === own ? port.name : start.name}`

function report({ report, part }: CuttingTask, { name, at }: PlannedPort, place: PlaceRound): void {
  const { from, worstCase, rootSumSquare, allowed } = place
  if (worstCase.angle <= allowed.angle + 1e-9) return
  const port = part.ports.find(port => port.name === name && port.at === at)
  report({
    code: 'ports/place-open',
    severity: rootSumSquare.angle > allowed.angle + 1e-9 ? 'warning' : 'note',
    message: `${name}: its place round the bore comes out within ±${fixed(worstCase.angle, 3)}° of ${from} at the worst (±${fixed(rootSumSquare.angle, 3)}° root sum of squares), ±${fixed(worstCase.side, 3)} mm at either side edge; ±${fixed(allowed.angle, 3)}° is inspected`,
    hint: 'take a datum farther out or a dowel hole, or mill all tilts of a piece in one clamping; heights and timing do not move',
    path: port?.path ?? '/ports',
  })
}
