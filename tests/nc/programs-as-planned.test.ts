import { readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { SetUp, WindowCut } from '../../src/cutting/set-up.ts'
import { demo } from '../commands/fake-world.ts'
import { type Programmed, programsOf } from '../ports/proof/at-the-door.ts'
import { type Move, readNc } from '../ports/proof/nc-reader.ts'
import { linerText, randomLiners } from '../proof/random-ports.ts'

const DEMO = readdirSync('parts').filter(name => name.startsWith('OX-') && demo(name).includes('\nports:'))
const PARTS = [
  ...DEMO.map(name => [name, demo(name)] as const),
  ...randomLiners(2, 3).map((ports, i) => [`random liner ${i + 1}`, linerText(ports)] as const),
]

describe.each(PARTS)('the programs of %s, as the command writes them', (_, text) => {
  const ready = programsOf(text).then(found => {
    if (!found) throw new Error('the part has errors')
    return found
  })

  it('are one a set-up of the plan, in its order, under its name', async () => {
    const { plan, programs } = await ready
    expect(programs.map(({ name }) => name)).toEqual(plan.setUps.map(({ program }) => program))
    for (const [i, setUp] of plan.setUps.entries()) {
      const { head } = readNc(programs[i]?.text ?? '')
      expect(head.get('set-up')).toBe(`${i + 1} of ${plan.setUps.length}`)
      expect(head.get('work')).toBe(setUp.work)
      expect(head.get('tool')).toBe(setUp.tool)
      expect(Number(head.get('cutter'))).toBeCloseTo(setUp.diameter, 6)
      expect(Number(head.get('tilt'))).toBeCloseTo(setUp.tilt, 3)
    }
  })

  it('run every window in the order of the set-up, with every cut of it in its order', async () => {
    for (const [setUp, moves] of await run(ready)) {
      const done = [...new Set(moves.map(({ about }) => about.join('|')))].map(key => key.split('|').at(-1))
      expect(done.filter(kind => CUTS.has(kind ?? ''))).toEqual(
        setUp.windows.flatMap(({ cuts }) => cuts.map(({ kind }) => kind)),
      )
      const stands = moves.map(({ rotary }) => rotary).filter((rotary, i, all) => rotary !== all[i - 1])
      const rotaries = setUp.windows.map(({ rotary }) => rotary)
      expect(stands.filter(Number.isFinite).map(rotary => rotary.toFixed(3))).toEqual(
        rotaries.filter((rotary, i) => rotary !== rotaries[i - 1]).map(rotary => rotary.toFixed(3)),
      )
    }
  })

  it('turn and feed as the cut does, and take its time', async () => {
    for (const [cut, setUp, moves] of await cutsOf(ready)) {
      const fed = moves.filter(({ rapid }) => !rapid)
      expect(new Set(fed.map(({ spindle }) => spindle))).toEqual(new Set([Math.round(setUp.spindleSpeed)]))
      // Over what is cut already it may go quicker, as the plan says.
      const clear = 'clearShare' in cut.shape ? cut.shape.clearShare : 1
      expect([Math.round(cut.feed), Math.round(clear * cut.feed)]).toContain(Math.max(...fed.map(({ feed }) => feed)))
      const time = fed.reduce((sum, { from, to, feed }) => sum + length(from, to) / feed, 0)
      // A feed is written in whole millimetres a minute.
      expect(time / cut.time).toBeGreaterThan(0.98)
      expect(time / cut.time).toBeLessThan(1.02)
    }
  })

  it('go down by no more than a level at one place, as many times as there are levels', async () => {
    for (const [cut, , moves] of await cutsOf(ready)) {
      if (cut.kind === 'drill' || cut.kind === 'flat' || cut.kind === 'wind down') continue
      // A ramp passes a place at one height and comes back at another.
      const ramps = 'down' in cut.shape
      // Without a slug the cut through ends with passes of a quarter of the cutter over the whole floor.
      if (cut.kind === 'cut through' && 'slug' in cut.shape && cut.shape.slug === 'cut away') continue
      const heights = new Map<string, number[]>()
      // Along a wall that is open it comes down at one place, in its corners once for all levels of each.
      const down = 'arc' in cut.shape ? moves.find(({ rapid }) => !rapid)?.to : undefined
      for (const { rapid, to } of moves) {
        if (rapid || (to.x === down?.x && to.y === down.y)) continue
        const key = `${to.x} ${to.y}`
        heights.set(key, [...(heights.get(key) ?? []), to.z])
      }
      for (const found of heights.values()) {
        const levels = [...new Set(found)].toSorted((a, b) => b - a)
        for (const [i, z] of levels.slice(1).entries()) {
          expect((levels[i] ?? z) - z).toBeLessThan(cut.depth + 0.002)
        }
      }
      const most = Math.max(...[...heights.values()].map(found => new Set(found).size))
      if (!ramps) expect(most).toBe(cut.passes)
    }
  })

  it('are the steps that the sheet prints', async () => {
    const { plan } = await ready
    for (const setUp of plan.setUps) {
      const steps = plan.operations
        .find(({ number }) => number === setUp.operation)
        ?.steps.filter(step => step.setUp === setUp.number)
      expect(steps?.map(({ tool }) => tool)).toEqual(steps?.map(() => setUp.tool))
      expect(steps?.map(({ window, tableFeed, depth, passes }) => ({ window, tableFeed, depth, passes }))).toEqual(
        setUp.windows.flatMap(({ name, cuts }) =>
          cuts.map(({ feed, depth, passes }) => ({ window: name, tableFeed: feed, depth, passes })),
        ),
      )
    }
  })
})

const CUTS: ReadonlySet<string> = new Set([
  ...['flat', 'wind down', 'drill', 'rough', 'cut through', 'finish', 'spring'],
  ...['clear corners', 'finish corners', 'spring corners'],
])

const length = (a: Move['from'], b: Move['to']): number => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z)

async function run(ready: Promise<Programmed>): Promise<readonly (readonly [SetUp, readonly Move[]])[]> {
  const { plan, programs } = await ready
  return plan.setUps.map((setUp, i) => [setUp, readNc(programs[i]?.text ?? '').moves] as const)
}

/** Every cut with the moves that its program makes for it. */
async function cutsOf(ready: Promise<Programmed>): Promise<readonly (readonly [WindowCut, SetUp, readonly Move[]])[]> {
  return (await run(ready)).flatMap(([setUp, moves]) => {
    const stretches = new Map<string, Move[]>()
    for (const move of moves) {
      if (!CUTS.has(move.about.at(-1) ?? '')) continue
      const key = move.about.join('|')
      stretches.set(key, [...(stretches.get(key) ?? []), move])
    }
    const cuts = setUp.windows.flatMap(({ cuts }) => cuts)
    expect(stretches.size).toBe(cuts.length)
    return [...stretches.values()].flatMap((stretch, i) => {
      const cut = cuts[i]
      return cut ? [[cut, setUp, stretch] as const] : []
    })
  })
}
