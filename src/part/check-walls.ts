import type { Band } from '../band.ts'
import { wallsOf } from '../wall.ts'
import type { Part } from './part.ts'
import type { PartFault } from './part-fault.ts'
import { takesCase } from './takes-case.ts'
import { thinWall } from './thin-wall.ts'

/** The outside is larger than the bore everywhere, the bore goes where the kind needs one, and the case fits the wall. */
export function checkWalls(part: Part): readonly PartFault[] {
  const { kind, bore, stock } = part
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

  return [...faults, ...hardThrough(part)]
}

/** A case that leaves no core, from the sides that take it. The worst wall is told. */
function hardThrough(part: Part): readonly PartFault[] {
  const { hardening } = part
  const depth = hardening?.depth?.least
  if (depth === undefined) return []
  const worst = wallsOf(part)
    .map(({ outside, bore }) => {
      const around = takesCase(part, 'outside', outside.name)
      const inside = takesCase(part, 'bore', bore.name)
      const from = around && inside ? 'both sides' : around ? 'the outside' : 'the bore'
      return { wall: (outside.size.lower - bore.size.upper) / 2, sides: Number(around) + Number(inside), from }
    })
    .filter(({ wall, sides }) => wall > 0 && sides * depth >= wall)
    .toSorted((a, b) => a.wall - a.sides * depth - (b.wall - b.sides * depth))[0]
  if (!worst) return []
  const message = `a case of ${depth} mm from ${worst.from} goes through the wall of ${worst.wall.toFixed(2)} mm`
  return [{ code: 'input/wall', message, hint: 'ask for a shallower case', path: `${hardening?.path}/depth` }]
}

/** An outside in inches round a bore in millimetres. */
function inchHint({ size: outer }: Band, { size: inner }: Band): string | undefined {
  const inches = outer.nominal * 25.4
  if (!(inches > inner.nominal && inches < 3 * inner.nominal)) return undefined
  return `${outer.nominal} in is ${Number(inches.toFixed(4))} mm: if it is inches, write in after it`
}
