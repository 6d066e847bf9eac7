import { beforeAll, expect, it } from 'vitest'
import { parse } from 'yaml'
import { toMachine, type Vector } from '../../src/machine-frame.ts'
import type { Plan } from '../../src/plan/plan.ts'
import type { PortWindow } from '../../src/ports/port.ts'
import { demo } from '../commands/fake-world.ts'
import { type Programmed, programsOf } from './proof/at-the-door.ts'
import { readNc } from './proof/nc-reader.ts'

/** Half the shank of the small cutters of the demo's works. */
const SHANK = 3

/** Below the shank, of every end mill of the demo's works. */
const FLUTES: ReadonlyMap<string, number> = new Map(
  (parse(demo('shop.yaml')) as { tools: Readonly<Record<string, unknown>>[] }).tools.map(tool => [
    String(tool['name']),
    Number(tool['flute-length']),
  ]),
)

/** The cuts that go to the bottom. */
const LOWEST: ReadonlySet<string> = new Set([
  'cut through',
  'finish',
  'finish corners',
  'spring corners',
  'clear corners',
])

let ready: Programmed | undefined
beforeAll(async () => {
  ready = await programsOf(demo('OX-098-21.yaml'))
}, 120_000)

/**
 * Places all over the outside by the fixture's own transform, and of each place of the programs how far the outside under
 * the shank stands above the tip: no formula of the plan's has a part in it.
 */
it.each([
  ['main transfer', 9.2],
  ['boost', 10.9],
  ['exhaust', 6.57],
])(
  '%s: the length below the shank is what the programs’ lowest places and a fine mesh of the outside give, %d mm',
  (name, found) => {
    if (!ready) throw new Error('the part has errors')
    const { plan, programs } = ready
    const [window] = plan.ports.find(port => port.name === name)?.windows ?? []
    const setUps = plan.setUps.filter(({ windows }) => windows.some(({ port }) => port === name))
    if (!window) throw new Error('no such port')
    const outside = meshOf(plan, window)
    const mostBelow = new Map<string, number>()
    for (const setUp of setUps) {
      if (setUp.work === 'drill entry holes') continue
      const text = programs.find(program => program.name === setUp.program)?.text ?? ''
      for (const { to, rapid, rotary, about } of readNc(text).moves) {
        if (!LOWEST.has(about.at(-1) ?? '')) continue
        if (rapid || Math.abs(rotary - window.rotary) > 1e-6) continue
        const [x, y, z] = [to.x, to.y, to.z]
        if (z > window.plunge.zThrough + 6) continue
        mostBelow.set(setUp.tool, Math.max(mostBelow.get(setUp.tool) ?? 0, outside.highest(x, y) - z))
      }
    }
    // The smallest cutter comes last: for it the plan says what is needed.
    const finisher = setUps.findLast(({ windows }) =>
      windows.some(one => one.port === name && one.cuts.some(({ kind }) => kind.startsWith('finish'))),
    )
    const most = mostBelow.get(finisher?.tool ?? '') ?? 0
    const needed = window.needed?.flutes ?? 0
    // Whatever roughs it has room below its own shank.
    for (const [tool, below] of mostBelow) expect(below, tool).toBeLessThan(FLUTES.get(tool) ?? 0)
    // The mesh misses the highest place by little and the chords of the paths run within their own tolerance.
    expect(most).toBeCloseTo(found, 1)
    expect(needed).toBeGreaterThan(most - 0.01)
    expect(needed).toBeLessThan(most + 0.05)
    expect(window.held?.flutes).toBeGreaterThanOrEqual(needed)
  },
  60_000,
)

function meshOf(plan: Plan, window: PortWindow) {
  const places: Vector[] = []
  const { fixture } = plan.shop
  if (!fixture) throw new Error('the plan names its fixture')
  for (let azimuth = window.at - 60; azimuth < window.at + 60; azimuth += 0.25) {
    for (let depth = 0; depth < 92; depth += 0.1) {
      const a = (azimuth * Math.PI) / 180
      const r = window.walls.outside
      const at = toMachine(fixture, window, [r * Math.cos(a), r * Math.sin(a), -depth])
      if (Math.hypot(at[0] - window.x, at[1] - window.crossOffset) < 15 && at[2] > window.plunge.zThrough)
        places.push(at)
    }
  }
  // By squares as wide as the shank's radius: what a shank covers lies in the square of its middle and those about it.
  const squares = new Map<string, Vector[]>()
  for (const place of places) {
    const key = squareOf(place[0], place[1]).join()
    const square = squares.get(key)
    if (square) square.push(place)
    else squares.set(key, [place])
  }
  return {
    highest: (x: number, y: number): number => {
      const [i, j] = squareOf(x, y)
      let most = Number.NEGATIVE_INFINITY
      for (const a of [i - 1, i, i + 1])
        for (const b of [j - 1, j, j + 1])
          for (const [px, py, pz] of squares.get([a, b].join()) ?? [])
            if (pz > most && Math.hypot(px - x, py - y) <= SHANK) most = pz
      return most
    },
  }
}

const squareOf = (x: number, y: number): readonly [number, number] => [Math.floor(x / SHANK), Math.floor(y / SHANK)]
