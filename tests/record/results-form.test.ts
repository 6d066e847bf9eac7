import { describe, expect, test } from 'vitest'
import { hasErrors } from '../../src/finding.ts'
import { readResults } from '../../src/part/read-results.ts'
import { characteristicOf } from '../../src/record/characteristic-of.ts'
import { checkResults } from '../../src/record/check-results.ts'
import { judgeResults } from '../../src/record/judge-results.ts'
import { resultsForm, stagesMeasured } from '../../src/record/results-form.ts'
import { demoPlan } from '../sheets/demo-packet.ts'

const PARTS = ['OX-098-21', 'OX-098-30', 'OX-098-31', 'OX-105-02', 'OX-112-03', 'OX-131-07']

describe.each(PARTS)('a results file to fill in for %s', name => {
  const plan = demoPlan(name)
  const gauges = plan.inspection.characteristics.map(({ gauge }) => gauge)
  const form = (operation: number): string => resultsForm(plan, operation, { date: plan.date, schemaLine: '' })

  test.each(stagesMeasured(plan).map(({ operation }) => operation))(
    'after %i reads, and holds no reading',
    operation => {
      const { results, findings } = readResults(form(operation), 'r.yaml')
      expect(findings).toEqual([])
      expect(results?.readings).toEqual([])
      expect(hasErrors(checkResults(plan, results ?? never(), gauges))).toBe(false)
    },
  )

  // In every line of the first piece the number behind the # is the one that the key means.
  test.each(stagesMeasured(plan).map(({ operation }) => operation))(
    'after %i asks by keys that mean what they say',
    operation => {
      const lines = [...form(operation).matchAll(/^ {4}(.+?): *# (\d+) /gm)]
      expect(lines.length).toBeGreaterThan(0)
      for (const [, key = '', number] of lines) {
        const of = key.startsWith('"') ? (JSON.parse(key) as string) : key
        expect(characteristicOf(plan, { of, after: operation })?.number).toBe(Number(number))
      }
    },
  )
})

test('filled in with the middle of the limits, every piece is in limits', () => {
  const plan = demoPlan()
  const text = resultsForm(plan, 100, { date: plan.date, schemaLine: '' }).replace(/^( {4}bore:).*$/gm, '$1 48.0080')
  const { results } = readResults(text, 'r.yaml')
  const judged = judgeResults(plan, results?.readings ?? [])
  // Every piece started for good ones; the set-up pieces and the coupon are not among them.
  expect(judged.map(({ verdict }) => verdict)).toEqual(Array.from({ length: 16 }, () => 'in limits'))
})

test('filled in whole, nothing is missing: set-up pieces and the coupon are asked for by nobody', () => {
  const plan = demoPlan()
  const text = resultsForm(plan, 100, { date: plan.date, schemaLine: '' }).replace(/^( {4}bore:).*$/gm, '$1 48.0080')
  const missing = (filled: string): readonly string[] =>
    checkResults(plan, readResults(filled, 'r.yaml').results ?? never(), []).flatMap(({ code, message }) =>
      code === 'results/missing' ? [message] : [],
    )
  expect(missing(text)).toEqual([])
  expect(missing(text.replace(/48\.0080/, ''))).toEqual(['bore: 15 of 16 pieces are measured'])
})

test('a number above the last piece is no piece: set-up pieces and coupons are marked otherwise', () => {
  const plan = demoPlan()
  const form = resultsForm(plan, 100, { date: plan.date, schemaLine: '' })
  const codes = (serial: string): readonly string[] => {
    const text = form.replace(/serial: 16$(.*?)^ {4}bore:/ms, `serial: ${serial}$1    bore: 48.0080`)
    return checkResults(plan, readResults(text, 'r.yaml').results ?? never(), []).map(({ code }) => code)
  }
  expect(codes('16')).not.toContain('results/unknown-serial')
  expect(codes('17')).toContain('results/unknown-serial')
  expect(codes('S1')).not.toContain('results/unknown-serial')
})

const never = (): never => {
  throw new Error('it reads')
}
