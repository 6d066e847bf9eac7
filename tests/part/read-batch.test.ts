import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isDate } from '../../src/part/date.ts'
import { readBatch } from '../../src/part/read-batch.ts'

describe('a batch file', () => {
  it('the demo batch reads, numbers of things as text', () => {
    expect(readBatch(readFileSync('parts/batch-2631.yaml', 'utf8'), 'batch.yaml')).toEqual({
      batch: { number: '2631', quantity: 12, date: '2026-11-25', heat: '7745A' },
      findings: [],
    })
  })

  it('all of it may be left out, and noughts before a number stay', () => {
    expect(readBatch('batch: {}', 'batch.yaml')).toEqual({ batch: {}, findings: [] })
    expect(readBatch('batch: {number: 0042}', 'batch.yaml').batch).toEqual({ number: '0042' })
  })
})

describe('days of the calendar', () => {
  it.each([
    ['2026-02-29', false],
    ['2028-02-29', true],
    ['2100-02-29', false],
    ['2000-02-29', true],
    ['2026-04-31', false],
    ['2026-00-10', false],
    ['2026-13-10', false],
    ['2026-1-1', false],
    ['25.11.2026', false],
  ])('%s: %s', (text, real) => {
    expect(isDate(text)).toBe(real)
  })

  it('every day that the language has a date for is one', () => {
    const days = fc.date({ min: new Date('1900-01-01'), max: new Date('2200-01-01'), noInvalidDate: true })
    fc.assert(
      fc.property(days, day => {
        expect(isDate(day.toISOString().slice(0, 10))).toBe(true)
      }),
    )
  })
})
