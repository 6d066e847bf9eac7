import { describe, expect, test } from 'vitest'
import { readResults } from '../../src/part/read-results.ts'
import { readResultsCsv } from '../../src/part/read-results-csv.ts'

const HEAD = 'results: {part: OX-098-21, revision: B, batch: 2631, date: 2026-12-14, by: R. Tarn, temperature: 20.5}\n'
const AFTER = 'after: {operation: 110}\n'

const found = ({
  findings,
}: {
  readonly findings: readonly {
    readonly code: string
    readonly at: { readonly line: number; readonly column: number }
  }[]
}) => findings.map(({ code, at }) => `${at.line}:${at.column} ${code}`)

describe('results in YAML', () => {
  test('by depth and direction, one reading, none, bow, note, hardness and losses', () => {
    const { results, findings } = readResults(
      `${HEAD}gauges:
  seat: {gauge: comparator set on a master disc, id: G-11, set-on: 55.0002}
${AFTER}directions: [0, 45, 90, 135]
pieces:
  - {serial: 1, seat: {20: [55.1842, 55.1848, 55.1839, 55.1831], 60: [55.1851, null, 55.1836, 55.1840]}, bow: 0.006}
  - {serial: 2, seat: 55.1790, note: not measured at 60}
hardness: {coupon: C2, load: HV0.5, surface: [592, 601, 588], depth: 0.41}
lost: [{serial: 9, operation: 90, why: window cut at the wrong side}]
`,
      'after.yaml',
    )
    expect(findings).toEqual([])
    expect(results?.readings).toHaveLength(9)
    expect(results?.readings[0]).toMatchObject({
      serial: '1',
      of: 'seat',
      after: 110,
      depth: 20,
      direction: 0,
      value: 55.1842,
      places: 4,
      temperature: 20.5,
      gauge: { id: 'G-11', setOn: 55.0002 },
      at: { line: 7, column: 29 },
    })
    // Left empty is not measured.
    expect(results?.readings.filter(({ depth }) => depth === 60).map(({ direction }) => direction)).toEqual([
      0, 90, 135,
    ])
    expect(results?.readings.at(-1)).toMatchObject({
      serial: '2',
      value: 55.179,
      places: 4,
      note: 'not measured at 60',
    })
    expect(results?.hardness).toMatchObject({ surface: [592, 601, 588], depth: 0.41 })
    expect(results?.lost).toMatchObject([{ serial: '9', operation: 90 }])
  })

  test.each([
    ['no head', `${AFTER}pieces: []\n`, '1:1 input/missing-key'],
    ['no day', HEAD.replace('2026-12-14', '2026-02-30'), '1:60 input/unreadable'],
    ['a key that is none', `${HEAD}sizes: []\n`, '2:1 input/unknown-key'],
    [
      'a list shorter than its directions',
      `${HEAD}directions: [0, 90]\npieces: [{serial: 1, seat: [55.1]}]\n`,
      '3:28 input/choose-one',
    ],
    ['a depth that is none', `${HEAD}pieces: [{serial: 1, seat: {top: 55.1}}]\n`, '2:34 input/unreadable'],
    ['a word for a size', `${HEAD}pieces: [{serial: 1, seat: good}]\n`, '2:28 input/unreadable'],
    ['a decimal comma', `${HEAD}pieces: [{serial: 1, seat: "55,1842"}]\n`, '2:28 input/decimal-comma'],
    ['no serial', `${HEAD}pieces: [{seat: 55.1}]\n`, '2:10 input/missing-key'],
    ['a temperature of another scale', HEAD.replace('20.5', '68 F'), '1:98 input/wrong-unit'],
    ['a loss of nobody', `${HEAD}lost: [{why: dropped}]\n`, '2:8 input/missing-key'],
  ])('%s is found where it stands', (_, text, place) => {
    expect(found(readResults(text, 'r.yaml'))[0]).toBe(place)
    expect(readResults(text, 'r.yaml').results).toBeUndefined()
  })
})

describe('results in CSV', () => {
  const LINE = 'part,revision,batch,serial,operation,feature,depth,direction,value,unit\n'

  test('one reading a line, what is empty not measured', () => {
    const { results, findings } = readResultsCsv(
      `${LINE}OX-098-21,B,2631,1,110,seat,20,45,55.1840,mm\nOX-098-21,B,2631,2,110,seat,20,45,,mm\nOX-098-21,B,2631,3,110,seat,20,45,2.17260,in\n`,
      'r.csv',
    )
    expect(findings).toEqual([])
    expect(results).toMatchObject({ part: 'OX-098-21', revision: 'B', batch: '2631' })
    expect(
      results?.readings.map(({ serial, value, places, at }) => [serial, value, places, at.line, at.column]),
    ).toEqual([
      ['1', 55.184, 4, 2, 35],
      ['3', 55.18404, 5, 4, 35],
    ])
  })

  test('semicolons and decimal commas, quotes, a mark at the start, lines of Windows', () => {
    const { results } = readResultsCsv('\uFEFFserial;feature;value;note\r\n1;seat;"55,1842";"oil; wiped"\r\n', 'r.csv')
    expect(results?.readings[0]).toMatchObject({
      value: 55.1842,
      places: 4,
      note: 'oil; wiped',
      at: { line: 2, column: 8 },
    })
  })

  test("a firm's own list by its columns", () => {
    const columns = new Map([
      ['serial', 'Nr'],
      ['seat', 'D 1'],
    ])
    const { results } = readResultsCsv('Nr,"D 1",D2\n1,55.1842,x\n2,,y\n', 'r.csv', { columns, after: 110 })
    expect(results?.readings).toMatchObject([{ serial: '1', of: 'seat', after: 110, value: 55.1842 }])
    expect(found(readResultsCsv('Nr,D3\n1,55\n', 'r.csv', { columns, after: 110 }))).toEqual(['1:1 input/missing-key'])
  })

  test.each([
    ['no lines', '', '1:1 input/empty'],
    ['a column that is none', 'serial,feature,value,colour\n', '1:22 input/unknown-key'],
    ['a column twice', 'serial,feature,value,value\n', '1:22 input/duplicate-key'],
    ['no value column', 'serial,feature\n1,seat\n', '1:1 input/missing-key'],
    ['a word for a size', 'serial,feature,value\n1,seat,good\n', '2:8 input/unreadable'],
    ['a value of nobody', 'serial,feature,value\n,seat,55.1\n', '2:1 input/missing-key'],
    ['a unit that is none', 'serial,feature,value,unit\n1,seat,55.1,furlong\n', '2:13 input/wrong-unit'],
    ['two batches', 'batch,serial,feature,value\n1,1,seat,55.1\n2,2,seat,55.1\n', '3:1 input/choose-one'],
    ['a day that is none', 'serial,feature,value,date\n1,seat,55.1,14.12.2026\n', '2:13 input/unreadable'],
    ['an open quote', 'serial,feature,value\n1,"seat,55.1\n', '2:1 input/unreadable'],
    ['a comma for a point between commas', 'serial,feature,value\n1,seat,"55,1"\n', '2:8 input/unreadable'],
  ])('%s is found where it stands', (_, text, place) => {
    expect(found(readResultsCsv(text, 'r.csv'))[0]).toBe(place)
    expect(readResultsCsv(text, 'r.csv').results).toBeUndefined()
  })
})
