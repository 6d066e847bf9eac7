import { afterAll, describe, expect, it } from 'vitest'
import type { Plan } from '../../src/plan/plan.ts'
import { programsOf } from '../ports/proof/at-the-door.ts'
import { type Move, readNc } from '../ports/proof/nc-reader.ts'
import { readGenerally, safeOf, wayOf, wholePlanOf } from './general-reader.ts'
import { beyondWall } from './in-window.ts'
import { CUTS, type ProgrammedWhole, type Reading, readingOf } from './programs-read.ts'

type Text = readonly [name: string, text: string]

/** Of random parts some have errors, and then no programs. */
const NONE = { plan: { setUps: [] } as unknown as Plan, programs: [], whole: { setUps: [] } as unknown as Plan }

/** As the command writes and prints them, planned anew for each. */
async function byCommand(text: string): Promise<ProgrammedWhole | undefined> {
  const programmed = await programsOf(text)
  return programmed && { ...programmed, whole: wholePlanOf(text) }
}

/** Programs of each part, held against its plan as it is printed: feeds, depths, tools, order, places. */
export function expectProgramsAsPlanned(
  parts: readonly Text[],
  programmedFrom: (text: string) => Promise<ProgrammedWhole | undefined> = byCommand,
): void {
  describe.each(parts)('the programs of %s', (_, text) => {
    // Planned and read when the first asks, and once; put away with the last.
    let reading: Promise<Reading> | undefined
    const found = (): Promise<Reading> => {
      reading ??= programmedFrom(text).then(programmed => readingOf(programmed ?? NONE))
      return reading
    }
    afterAll(() => {
      reading = undefined
    })

    it('are one a set-up of the plan, in its order, under its name', async () => {
      const { plan, programs } = await found()
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
      for (const [setUp, moves] of (await found()).runs) {
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
      for (const [cut, setUp, moves] of (await found()).cuts()) {
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
      for (const [cut, , moves] of (await found()).cuts()) {
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
          const known = heights.get(key)
          if (known) known.push(to.z)
          else heights.set(key, [to.z])
        }
        const steps = [...heights.values()].flatMap(found => {
          const levels = [...new Set(found)].toSorted((a, b) => b - a)
          return levels.slice(1).map((z, i) => (levels[i] ?? z) - z)
        })
        expect(steps.reduce((most, step) => Math.max(most, step), 0)).toBeLessThan(cut.depth + 0.002)
        // Where it comes to the wall and leaves it on arcs that meet, it is at one place twice a level, at heights that the arcs give.
        const apart = 'arc' in cut.shape ? Math.max(0.0015, cut.depth / 2) : 0.0015
        const most = Math.max(...[...heights.values()].map(found => levelsOf(found, apart)))
        if (!ramps) expect(most).toBe(cut.passes)
      }
    })

    it('are the steps that the sheet prints', async () => {
      const { plan } = await found()
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

    it('go where the plan goes, move for move, as a reader of the general kind reads them (gcode-toolpath, npm)', async () => {
      // The printed plan has twelve digits, which is not enough for the same chords.
      const { programs, whole: plan } = await found()
      for (const [i, { text }] of programs.entries()) {
        const setUp = plan.setUps[i]
        if (!setUp) throw new Error(`no set-up for program ${i + 1}`)
        expect(readGenerally(text)).toEqual(wayOf(plan, setUp, safeOf(text)))
      }
    })

    it('say all that holds before the first move of every window, so that a run is taken up again there', async () => {
      const { plan, programs } = await found()
      for (const [i, setUp] of plan.setUps.entries()) {
        const lines = (programs[i]?.text ?? '').split('\n')
        for (const { name, at, rotary } of setUp.windows) {
          const from = lines.indexOf(`(${name}, at ${at.toFixed(2)})`)
          const cut = lines.findIndex((line, j) => j > from && line.startsWith('G1'))
          const words = new Set(
            lines.slice(from + 1, cut + 1).flatMap(line => (line.startsWith('(') ? [] : line.split(' '))),
          )
          for (const word of [
            'G17',
            'G21',
            'G40',
            'G90',
            'G94',
            'G54',
            'M3',
            'M8',
            `S${setUp.spindleSpeed.toFixed(0)}`,
          ])
            expect(words, word).toContain(word)
          expect(words).toContain(`A${rotary.toFixed(3)}`)
          for (const axis of ['X', 'Y', 'Z', 'F', 'N'])
            expect(
              [...words].some(word => word.startsWith(axis)),
              axis,
            ).toBe(true)
        }
      }
    })

    it('keep the middle of a cutter that finishes within the limits that the sheet prints, and reach them', async () => {
      const { plan } = await found()
      for (const [cut, setUp, moves] of (await found()).cuts()) {
        if (cut.kind !== 'finish') continue
        const limits = setUp.windows.find(({ cuts }) => cuts.includes(cut))?.limits
        if (!limits) throw new Error('a window that is finished has no limits')
        const fed = moves.filter(({ rapid }) => !rapid)
        for (const axis of ['x', 'y'] as const) {
          const places = fed.map(({ to }) => to[axis])
          const [least, most] = limits[axis]
          // Chords stand off the wall by up to a thousandth, and places are written to one.
          expect(Math.abs(Math.min(...places) - least)).toBeLessThan(0.003)
          expect(Math.abs(Math.max(...places) - most)).toBeLessThan(0.003)
        }
      }
      const finished = plan.setUps.flatMap(({ windows }) =>
        windows.filter(({ cuts }) => cuts.some(({ kind }) => kind.startsWith('finish'))),
      )
      expect(finished.every(({ limits }) => limits !== undefined)).toBe(true)
    })

    it('keep every cutter inside its window, on every stretch of its way', async () => {
      // Chords stand off the wall by up to a thousandth, and places are written to one.
      const over = beyondWall(await found()).filter(({ beyond }) => beyond > 0.003)
      expect(over).toEqual([])
    })

    it('ease the feed on dives and in corners, and halve it where they break through', async () => {
      for (const [cut, , moves] of (await found()).cuts()) {
        const fed = moves.filter(({ rapid }) => !rapid)
        const { shape } = cut
        if ('downShare' in shape) {
          // Quicker than the cut's own feed it is only over what is cut already; feeds are written whole and places to a thousandth.
          const down = fed
            .filter(({ from, to, feed }) => feed <= cut.feed + 0.5 && Math.hypot(to.x - from.x, to.y - from.y) > 0.1)
            .map(({ from, to, feed }) => ((feed - 0.5) * (from.z - to.z - 0.001)) / (length(from, to) + 0.001))
          expect(down.reduce((most, feed) => Math.max(most, feed), 0)).toBeLessThan(1.001 * shape.downShare * cut.feed)
        }
        if (shape.kind === 'finish' && shape.arc > 0) {
          const slowest = Math.min(...fed.map(({ feed }) => feed))
          // On an arc of half the cutter its rim goes twice as fast as its middle.
          expect(slowest).toBeLessThan(0.85 * cut.feed)
        }
      }
      const { plan } = await found()
      for (const { windows } of plan.setUps) {
        for (const { cuts } of windows) {
          const [rough, through] = ['rough', 'cut through'].map(kind => cuts.find(cut => cut.kind === kind))
          // But never so slow that the edge rubs: 4 µm a tooth. A cutter that roughs at that goes on at it.
          if (rough && through) expect(through.feed / rough.feed).toBeLessThan(rubs(plan) ? 1.0001 : 1)
          const drill = cuts.find(cut => cut.kind === 'drill')
          if (drill?.shape.kind === 'drill') expect(drill.shape.slowOut.share).toBe(0.5)
        }
      }
    })
  })
}

/** Whether a cutter roughs at the least feed at which an edge cuts, 4 µm a tooth. */
const rubs = ({ operations }: Pick<Plan, 'operations'>): boolean =>
  operations.some(({ steps }) => steps.some(({ action, feed }) => action.startsWith('rough ') && feed <= 0.004 + 1e-6))

/** Heights that differ by no more than their last place, as the floor of a level is written from two sides, are one. */
const levelsOf = (heights: readonly number[], apart: number): number =>
  heights.toSorted((a, b) => b - a).filter((z, i, all) => i === 0 || (all[i - 1] ?? z) - z > apart).length

const length = (a: Move['from'], b: Move['to']): number => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z)
