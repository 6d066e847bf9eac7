import type { Plan } from '../../src/plan/plan.ts'
import type { Reading } from './programs-read.ts'

type Place = { readonly x: number; readonly y: number }
type Line = readonly Place[]

/** mm: the way is looked at this often, as a straight move may leave a window whose wall bows in and come back to it. */
const LOOKED_AT = 0.25

/** How far a place lies inside a closed line, negative outside: the nearest of its stretches, and a ray that crosses it. */
function insideBy(outline: Line, { x, y }: Place): number {
  let nearest = Number.POSITIVE_INFINITY
  let within = false
  for (let i = 0; i < outline.length; i++) {
    const [a, b] = [outline[i], outline[(i + 1) % outline.length]]
    if (!a || !b) continue
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) within = !within
    const [u, v] = [b.x - a.x, b.y - a.y]
    const share = Math.min(1, Math.max(0, ((x - a.x) * u + (y - a.y) * v) / Math.max(1e-18, u * u + v * v)))
    nearest = Math.min(nearest, (x - a.x - share * u) ** 2 + (y - a.y - share * v) ** 2)
  }
  return (within ? 1 : -1) * Math.sqrt(nearest)
}

const outlineOf = ({ ports }: Plan, name: string, at: number, index: number): Line => {
  const window = ports.find(port => port.name === name && Math.abs(port.at - at) < 1e-6)?.windows[index - 1]
  if (!window) throw new Error(`no window ${index} of ${name}`)
  return window.outline.cutterPlane.map(({ x, y }) => ({ x: window.x + x, y: window.crossOffset + y }))
}

/** How far each cut's cutter comes over its window's wall on any move that cuts, most, mm; none where it stays inside. */
export function beyondWall({ plan, cuts }: Reading): readonly { readonly cut: string; readonly beyond: number }[] {
  return cuts().map(([cut, setUp, moves]) => {
    const here = setUp.windows.find(window => window.cuts.includes(cut))
    if (!here) throw new Error('a cut without a window')
    const outline = outlineOf(plan, here.port, here.at, here.window)
    let least = Number.POSITIVE_INFINITY
    for (const { rapid, from, to } of moves) {
      if (rapid) continue
      const parts = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / LOOKED_AT))
      for (let part = 0; part <= parts; part++) {
        const share = part / parts
        const place = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }
        least = Math.min(least, insideBy(outline, place))
      }
    }
    return { cut: `${cut.kind}, ${here.name}`, beyond: cut.shape.cutter / 2 - least }
  })
}
