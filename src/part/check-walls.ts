import type { Band } from '../band.ts'
import { wallsOf } from '../wall.ts'
import type { PartFault } from './check-part.ts'
import type { Part } from './part.ts'
import { thinWall } from './thin-wall.ts'

/** The outside is larger than the bore everywhere, the bore goes where the kind needs one, and the case fits the wall. */
export function checkWalls(part: Part): readonly PartFault[] {
  const { kind, bore, hardening, stock } = part
  const faults: PartFault[] = []
  if (bore.length === 0 && (kind === 'liner' || kind === 'sleeve')) {
    faults.push({ code: 'input/missing-key', message: `a ${kind} has a bore`, hint: 'bore: 48 H6', path: '/body' })
  }
  for (const key of ['bore', 'hone'] as const) {
    if (bore.length > 0 || stock[key] === undefined) continue
    const message = `stock for ${key === 'bore' ? 'grinding' : 'honing'} the bore, but there is no bore`
    faults.push({ code: 'input/not-used', severity: 'warning', message, hint: `delete ${key}`, path: `/stock/${key}` })
  }

  const walls = wallsOf(part)
  for (const { outside: band, bore: hole } of walls) {
    if (band.size.lower > hole.size.upper) continue
    const message = `no wall is left between ${band.name}, ${band.size.written}, and ${hole.name}, ${hole.size.written}`
    const hint = inchHint(band, hole) ?? 'sizes are diameters'
    faults.push({ code: 'input/wall', message, hint, path: `${band.path}/size` })
  }

  faults.push(...walls.flatMap(({ outside, bore }) => thinWall(part, outside, bore)))

  const thinnest = Math.min(...walls.map(({ outside, bore }) => (outside.size.lower - bore.size.upper) / 2))
  const depth = hardening?.depth?.least
  if (depth !== undefined && thinnest > 0 && 2 * depth >= thinnest) {
    const message = `a case of ${depth} mm from both sides goes through the wall of ${thinnest.toFixed(2)} mm`
    faults.push({ code: 'input/wall', message, hint: 'ask for a shallower case', path: `${hardening?.path}/depth` })
  }
  return faults
}

/** An outside in inches round a bore in millimetres. */
function inchHint({ size: outer }: Band, { size: inner }: Band): string | undefined {
  const inches = outer.nominal * 25.4
  if (!(inches > inner.nominal && inches < 3 * inner.nominal)) return undefined
  return `${outer.nominal} in is ${Number(inches.toFixed(4))} mm: if it is inches, write in after it`
}
