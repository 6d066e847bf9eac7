import type { EdgePoint, PlannedPort, PortWindow } from '../ports/port.ts'
import { type Degree, type Millimetre, wrapped } from '../units.ts'
import type { Gap } from './profile.ts'

/**
 * The half-section shows the part with its head to the left, cut above the centre line at azimuth `section` and seen from
 * azimuth `section` - 90: right is down the bore, up is the section's azimuth, so the eye is at their cross product.
 */
export type View = { readonly section: Degree; readonly seenFrom: Degree }

export const viewAt = (section: Degree): View => ({ section: wrapped(section), seenFrom: wrapped(section - 90) })

/** Half of what is seen of a cylinder on one side of the centre line. */
const QUADRANT: Degree = 45

/** Middle of the outside that is seen below the centre line, and of the far bore wall that is seen above it. */
export const outsideSeen = ({ section }: View): Degree => section - 135
export const boreSeen = ({ section }: View): Degree => section + 45

/** The parts of a closed outline that lie within a quadrant about `middle`, cut where it leaves the quadrant. */
export function seenRuns(outline: readonly EdgePoint[], middle: Degree): readonly (readonly EdgePoint[])[] {
  const runs: EdgePoint[][] = []
  let run: EdgePoint[] = []
  const off = (point: EdgePoint): Degree => wrapped(point.azimuth - middle)
  outline.forEach((from, index) => {
    const to = outline[(index + 1) % outline.length] ?? from
    const [a, b] = [off(from), off(to)]
    if (Math.abs(a) <= QUADRANT) run.push(from)
    for (const limit of a < b ? [-QUADRANT, QUADRANT] : [QUADRANT, -QUADRANT]) {
      if (a < limit === b < limit || Math.abs(a - b) > 180) continue
      const part = (limit - a) / (b - a)
      run.push({ azimuth: middle + limit, depth: from.depth + part * (to.depth - from.depth) })
      if (Math.abs(b) > QUADRANT) {
        runs.push(run)
        run = []
      }
    }
  })
  if (run.length === 0) return runs
  const [first, ...rest] = runs
  const whole = outline.length > 0 && runs.length === 0
  if (whole) return [[...run, ...run.slice(0, 1)]]
  return first && isSeen(outline[0], middle) ? [[...run, ...first], ...rest] : [...runs, run]
}

const isSeen = (point: EdgePoint | undefined, middle: Degree): boolean =>
  point !== undefined && Math.abs(wrapped(point.azimuth - middle)) <= QUADRANT

/** The depths at which a closed outline crosses an azimuth: its shallowest and its deepest. */
function crossing(outline: readonly EdgePoint[], azimuth: Degree): readonly [Millimetre, Millimetre] | undefined {
  const depths = outline.flatMap((from, index) => {
    const to = outline[(index + 1) % outline.length] ?? from
    const [a, b] = [wrapped(from.azimuth - azimuth), wrapped(to.azimuth - azimuth)]
    if (a < 0 === b < 0 || Math.abs(a - b) > 180) return []
    return [from.depth + (a / (a - b)) * (to.depth - from.depth)]
  })
  return depths.length < 2 ? undefined : [Math.min(...depths), Math.max(...depths)]
}

/** The windows as the section plane cuts them: walls straight from the bore edge to the outside edge. */
export const gapsAt = (
  ports: readonly PlannedPort[],
  boreOutline: (window: PortWindow) => readonly EdgePoint[],
  azimuth: Degree,
): readonly Gap[] =>
  ports.flatMap(({ name, windows }) =>
    windows.flatMap(window => {
      const inner = crossing(boreOutline(window), azimuth)
      const outer = crossing(window.outline.outside, azimuth)
      return inner && outer ? [{ port: name, inner, outer }] : []
    }),
  )

/** The port centre to cut through that shows most: windows seen whole from outside count full, a window in section half. */
export function tellingView(ports: readonly PlannedPort[], other: Degree = 0): View {
  const windows = ports.flatMap(port => port.windows)
  const telling = (section: Degree): number => {
    const view = viewAt(section)
    const outside = windows.map(({ outline, width, height }) => {
      const seen = outline.outside.filter(point => isSeen(point, outsideSeen(view))).length
      return (width * height * seen) / Math.max(1, outline.outside.length)
    })
    const cut = windows
      .filter(({ outline }) => crossing(outline.finished, section))
      .map(({ width, height }) => (width * height) / 2)
    return [...outside, ...cut].reduce((sum, part) => sum + part, 0)
  }
  const [best] = ports.map(({ at }) => at).toSorted((a, b) => telling(b) - telling(a))
  return viewAt(best ?? other)
}
