import { expect } from 'vitest'
import type { SetUp, WindowCut } from '../../src/cutting/set-up.ts'
import type { Plan } from '../../src/plan/plan.ts'
import type { Programmed } from '../ports/proof/at-the-door.ts'
import { type Move, readNc } from '../ports/proof/nc-reader.ts'

/** Programs and printed plan of a part, and the plan itself, whose every digit the same chords need. */
export type ProgrammedWhole = Programmed & { readonly whole: Plan }

export const CUTS: ReadonlySet<string> = new Set([
  ...['flat', 'wind down', 'drill', 'rough', 'cut through', 'finish', 'spring'],
  ...['clear corners', 'finish corners', 'spring corners'],
])

type Run = readonly [SetUp, readonly Move[]]
type CutRun = readonly [WindowCut, SetUp, readonly Move[]]

/** Programs as our reader reads them. `cuts`: every cut with the moves that its program makes for it. */
export type Reading = ProgrammedWhole & { readonly runs: readonly Run[]; readonly cuts: () => readonly CutRun[] }

export function readingOf(programmed: ProgrammedWhole): Reading {
  const { plan, programs } = programmed
  const runs = plan.setUps.map((setUp, i) => [setUp, readNc(programs[i]?.text ?? '').moves] as const)
  let cuts: readonly CutRun[] | undefined
  return {
    ...programmed,
    runs,
    cuts: () => {
      cuts ??= runs.flatMap(cutsOf)
      return cuts
    },
  }
}

function cutsOf([setUp, moves]: Run): readonly CutRun[] {
  const stretches = new Map<string, Move[]>()
  for (const move of moves) {
    if (!CUTS.has(move.about.at(-1) ?? '')) continue
    const key = move.about.join('|')
    const stretch = stretches.get(key)
    if (stretch) stretch.push(move)
    else stretches.set(key, [move])
  }
  const cuts = setUp.windows.flatMap(({ cuts }) => cuts)
  expect(stretches.size).toBe(cuts.length)
  return [...stretches.values()].flatMap((stretch, i) => {
    const cut = cuts[i]
    return cut ? [[cut, setUp, stretch] as const] : []
  })
}
