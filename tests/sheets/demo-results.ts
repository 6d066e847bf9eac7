import { readFileSync } from 'node:fs'
import { readPistons } from '../../src/part/read-pistons.ts'
import { readResults } from '../../src/part/read-results.ts'
import { entryOf } from '../../src/record/book.ts'
import { pairBatch } from '../../src/record/pair-batch.ts'
import { recordBatch } from '../../src/record/record-batch.ts'
import type { ResultsToPrint } from '../../src/sheets/results-paper.ts'
import { demoPlan } from './demo-packet.ts'

const textOf = (name: string): string => readFileSync(new URL(`../../parts/${name}`, import.meta.url), 'utf8')

/** Results of the demo batch up to that stage, as the command hands them to the sheets. */
export function demoResults(...stages: readonly ('turned' | 'milled' | 'nitrided' | 'honed')[]): ResultsToPrint {
  const plan = demoPlan()
  const entries = stages.map(stage => {
    const name = `results-2631-${stage}.yaml`
    const { results } = readResults(textOf(name), name)
    if (!results) throw new Error(`${name} does not read`)
    return entryOf(results, stage)
  })
  const recorded = recordBatch({
    plan,
    entries,
    yields: { whole: 0.9, confidence: 0.9, ahead: () => 0.95 },
    gaugesFor: () => [],
  })
  const { pistons } = readPistons(textOf('pistons-2631.csv'), 'pistons-2631.csv')
  const pairing = pairBatch({
    plan,
    judged: recorded.judged,
    lost: new Set(recorded.standing.lost.map(({ serial }) => serial)),
    pistons: pistons ?? [],
    clearance: { least: 0.057, most: 0.073, wanted: 0.065 },
  })
  const dates = entries.flatMap(({ date }) => (date === undefined ? [] : [date]))
  return { plan, recorded, pairing, dates }
}
