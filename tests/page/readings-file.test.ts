import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readingsCsv, type TypedReading } from '../../src/page/readings-csv.ts'
import { numberOf, verdictOf } from '../../src/page/verdict-of.ts'
import { readResultsCsv } from '../../src/part/read-results-csv.ts'
import { checkResults } from '../../src/record/check-results.ts'
import { judgeResults } from '../../src/record/judge-results.ts'
import { demoPlan } from '../sheets/demo-packet.ts'

const plan = demoPlan()
const HEAD = { part: 'OX-098-21', revision: 'B', batch: '2631', by: 'R. "Rob" Tarn, bench 2', temperature: '20,5' }
const measured = plan.inspection.characteristics.filter(
  ({ lower, upper, unit }) => (lower !== undefined || upper !== undefined) && unit !== '-',
)
const reading = fc.record({
  piece: fc.integer({ min: 1, max: 12 }).map(String),
  of: fc.constantFrom(...measured),
  share: fc.double({ min: -2, max: 3, noNaN: true }),
  comma: fc.boolean(),
})

describe('the file that the screen saves', () => {
  it('is read back whole, and every reading is judged as it was on the screen', () => {
    fc.assert(
      fc.property(fc.uniqueArray(reading, { selector: ({ piece, of }) => `${piece} ${of.number}` }), all => {
        const typed = all.map(({ piece, of, share, comma }): TypedReading => {
          const [low, high] = [of.lower ?? (of.upper ?? 1) / 2, of.upper ?? (of.lower ?? 1) * 2]
          const text = (low + share * (high - low)).toFixed(of.places)
          const { number, operation, unit } = of
          return { piece, number, operation, typed: comma ? text.replace('.', ',') : text, unit, date: '2026-12-14' }
        })
        const { results, findings } = readResultsCsv(readingsCsv(typed, HEAD), 'readings.csv')
        expect(findings).toEqual([])
        const readings = results?.readings ?? []
        expect(readings.map(({ serial, of, after }) => [serial, of, after])).toEqual(
          typed.map(({ piece, number, operation }) => [piece, String(number), operation]),
        )
        const judged = new Map(
          judgeResults(plan, readings).map(one => [`${one.serial} ${one.characteristic}`, one.verdict]),
        )
        for (const { piece, number, typed: text } of typed) {
          const of = measured.find(one => one.number === number)
          const value = numberOf(text)
          if (!of || value === undefined) throw new Error('typed what is measured')
          const onScreen = verdictOf(plan, of, value, { units: 'mm', temperature: 20.5 })
          expect(judged.get(`${piece} ${number}`), `${of.name} ${text}`).toBe(onScreen)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('takes a number with a comma or a point, and nothing else', () => {
    expect(['48,0012', ' 48.0012 ', '\u22120.5', '.5'].map(numberOf)).toEqual([48.0012, 48.0012, -0.5, 0.5])
    expect(['', '48.0.1', '1e3', 'ok', '48,001.2', '0x10'].map(numberOf)).toEqual(Array(6).fill(undefined))
  })
})

describe('a unit beside a reading', () => {
  const roughness = measured.find(({ unit, name }) => unit === 'µm' && name.includes('Ra'))
  if (!roughness?.upper) throw new Error('the demo liner has a roughness with a limit')
  const { number, operation, upper } = roughness
  const line = (value: number, unit: string) =>
    `serial,operation,feature,value,unit\n1,${operation},${number},${value},${unit}\n`
  const read = (value: number, unit: string) => readResultsCsv(line(value, unit), 'own.csv').results?.readings ?? []

  // 1 µm is 0.001 mm, 1 in is 25.4 mm: ISO 80000-1, the inch by definition.
  it('counts: a roughness over its limit is out in whatever length it is written', () => {
    const verdicts = [
      [2 * upper, 'µm'],
      [0.002 * upper, 'mm'],
      [2 * upper, ''],
    ] as const
    for (const [value, unit] of verdicts) expect(judgeResults(plan, read(value, unit))[0]?.verdict, unit).toBe('out')
    expect(judgeResults(plan, read(upper / 2, 'µm'))[0]?.verdict).toBe('in limits')
  })

  it('that is of another kind is told, not ignored', () => {
    const { results } = readResultsCsv(line(600, 'HV'), 'own.csv')
    if (!results) throw new Error('the list is read')
    expect(checkResults(plan, results, []).map(({ code }) => code)).toContain('input/wrong-unit')
  })
})
