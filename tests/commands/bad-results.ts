import { BATCH, HARDENED, HEAD, plan } from './issued-batch.ts'

const after = `after: {operation: ${HARDENED}}\n`
const MILLED = plan.operations.find(({ process }) => process === 'mill')?.number ?? 0
const HONED = plan.operations.find(({ process }) => process === 'hone')?.number ?? 0
const yaml = (pieces: string, more = ''): string => `${HEAD}${after}${more}pieces:\n${pieces}`
const one = (text: string): string => yaml(`  - {serial: 1, ${text}}\n`)
const COLUMNS =
  'part,revision,batch,serial,operation,feature,depth,direction,value,unit,gauge,gauge-id,temperature,date,by,note'
const csv = (...rows: readonly string[]): string => [COLUMNS, ...rows, ''].join('\n')
const row = (
  serial: string,
  feature: string,
  value: string,
  more: { readonly unit?: string; readonly date?: string; readonly operation?: string } = {},
): string =>
  `OX-098-21,B,${BATCH},${serial},${more.operation ?? HARDENED},${feature},20,0,${value},${more.unit ?? 'mm'},,,20,${more.date ?? '2026-12-14'},,`

/** What is wrong with a results file; its name and text; where the finding stands, how grave it is and its code. */
export const BAD_RESULTS: readonly (readonly [what: string, file: string, text: string, finding: string])[] = [
  ['nothing in it', 'r.yaml', '', '1:1 error input/empty'],
  ['words in the place of a file', 'r.yaml', 'seat 55.13\n', '1:1 error input/not-a-mapping'],
  ['a quote that is not closed', 'r.yaml', `${HEAD}after: {operation: "${HARDENED}\n`, '3:1 error input/yaml'],
  ['a tab before a key', 'r.yaml', `${HEAD}after:\n\toperation: ${HARDENED}\n`, '3:1 error input/tab'],
  ['a key twice', 'r.yaml', `${HEAD}${after}${after}pieces: []\n`, '3:1 error input/duplicate-key'],
  ['a key that is none', 'r.yaml', `${HEAD}${after}peices: []\n`, '3:1 error input/unknown-key'],
  ['no head', 'r.yaml', `${after}pieces: []\n`, '1:1 error input/missing-key'],
  [
    'no part in the head',
    'r.yaml',
    `results: {batch: ${BATCH}, date: 2026-12-14}\n${after}`,
    '1:10 error input/missing-key',
  ],
  [
    'a day that is none',
    'r.yaml',
    `${HEAD.replace('2026-12-14', '2026-02-30')}${after}pieces: []\n`,
    '1:62 error input/unreadable',
  ],
  [
    'a day before the plan',
    'r.yaml',
    `${HEAD.replace('2026-12-14', '2020-01-01')}${after}pieces: []\n`,
    '1:10 warning results/too-early',
  ],
  [
    'another part',
    'r.yaml',
    `${HEAD.replace('OX-098-21', 'OX-1')}${after}pieces: []\n`,
    '1:10 error results/other-batch',
  ],
  [
    'another revision',
    'r.yaml',
    `${HEAD.replace('revision: B', 'revision: A')}${after}pieces: []\n`,
    '1:10 warning results/other-revision',
  ],
  [
    'a temperature of boiling water',
    'r.yaml',
    `${HEAD.replace('temperature: 20', 'temperature: 100')}${after}pieces: []\n`,
    '1:87 error input/out-of-range',
  ],
  [
    'an operation that is none',
    'r.yaml',
    `${HEAD}after: {operation: 7}\npieces:\n  - {serial: 1, seat: 55.13}\n`,
    '4:23 error results/unknown-operation',
  ],
  ['no operation', 'r.yaml', `${HEAD}pieces:\n  - {serial: 1, seat: 55.13}\n`, '3:23 error results/no-operation'],
  ['an operation in words', 'r.yaml', `${HEAD}after: {operation: nitriding}\npieces: []\n`, '2:20 error input/schema'],
  ['a piece without a number', 'r.yaml', yaml('  - {seat: 55.13}\n'), '4:5 error input/missing-key'],
  [
    'a piece that is not in the batch',
    'r.yaml',
    yaml('  - {serial: 99, seat: 55.13}\n'),
    '4:24 error results/unknown-serial',
  ],
  [
    'a piece twice',
    'r.yaml',
    yaml('  - {serial: 1, seat: 55.13}\n  - {serial: 1, seat: 55.14}\n'),
    '5:23 warning results/twice',
  ],
  ['a surface that is none', 'r.yaml', one('saet: 55.13'), '4:23 error results/unknown-feature'],
  [
    'a surface that is not measured there',
    'r.yaml',
    `${HEAD}after: {operation: ${HONED}}\npieces:\n  - {serial: 1, seat: 54.98}\n`,
    '4:23 error results/unknown-feature',
  ],
  [
    'a port without saying which of its sizes',
    'r.yaml',
    `${HEAD}after: {operation: ${MILLED}}\npieces:\n  - {serial: 1, exhaust: 16.1}\n`,
    '4:26 error results/unknown-feature',
  ],
  ['a deviation in the place of a size', 'r.yaml', one('seat: 0.015'), '4:23 error results/deviation'],
  ['a size five tolerances off', 'r.yaml', one('seat: 56.13'), '4:23 warning results/far-off'],
  ['a decimal comma', 'r.yaml', one('seat: "55,13"'), '4:23 error input/decimal-comma'],
  ['a word in the place of a size', 'r.yaml', one('seat: good'), '4:23 error input/unreadable'],
  ['a size in a unit that is no length', 'r.yaml', one('seat: 55.13 kg'), '4:23 error input/wrong-unit'],
  ['a size that is true or false', 'r.yaml', one('seat: true'), '4:23 error input/schema'],
  ['a depth in words', 'r.yaml', one('seat: {top: 55.13}'), '4:29 error input/unreadable'],
  [
    'fewer readings than directions',
    'r.yaml',
    yaml('  - {serial: 1, seat: [55.13, 55.13]}\n', 'directions: [0, 45, 90, 135]\n'),
    '5:23 error input/choose-one',
  ],
  [
    'a direction in words',
    'r.yaml',
    yaml('  - {serial: 1, seat: 55.13}\n', 'directions: [north]\n'),
    '3:14 error input/unreadable',
  ],
  [
    'a gauge that is none',
    'r.yaml',
    yaml('  - {serial: 1, seat: 55.13}\n', 'gauges: {seat: {gauge: a good eye}}\n'),
    '5:23 warning results/unknown-gauge',
  ],
  [
    'an uncertainty of less than nothing',
    'r.yaml',
    yaml('  - {serial: 1, seat: 55.13}\n', 'gauges: {seat: {uncertainty: -0.002}}\n'),
    '3:30 error input/out-of-range',
  ],
  [
    'a hardness in words',
    'r.yaml',
    `${yaml('  - {serial: 1, seat: 55.13}\n')}hardness: {surface: [hard]}\n`,
    '5:22 error input/unreadable',
  ],
  [
    'a loss of a piece that is not in the batch',
    'r.yaml',
    `${yaml('  - {serial: 1, seat: 55.13}\n')}lost: [{serial: 40, operation: 90}]\n`,
    '5:8 error results/unknown-serial',
  ],
  [
    'a loss at an operation that is none',
    'r.yaml',
    `${yaml('  - {serial: 1, seat: 55.13}\n')}lost: [{serial: 2, operation: 95}]\n`,
    '5:8 error results/unknown-operation',
  ],
  [
    'five readings all alike',
    'r.yaml',
    yaml([1, 2, 3, 4, 5].map(n => `  - {serial: ${n}, seat: 55.13}\n`).join('')),
    '4:23 warning results/all-alike',
  ],
  [
    'more places than the gauge reads',
    'r.yaml',
    `${HEAD}after: {operation: 20}\npieces:\n  - {serial: 1, seat: 57.2501}\n`,
    '4:23 warning results/too-fine',
  ],
  [
    'a fine bore read warm',
    'r.yaml',
    `${HEAD.replace('temperature: 20', 'temperature: 29')}after: {operation: ${HONED}}\npieces:\n  - {serial: 1, bore: 48.008}\n`,
    '4:23 error results/too-warm',
  ],
  ['a list without its head', 'r.csv', `${row('1', 'seat', '55.13')}\n`, '1:1 error input/missing-key'],
  ['a list without a column for the value', 'r.csv', `${csv().replace('value,', '')}`, '1:1 error input/missing-key'],
  ['a word in the column of values', 'r.csv', csv(row('1', 'seat', 'good')), '2:35 error input/unreadable'],
  ['a row that is too short', 'r.csv', csv('OX-098-21,B'), '2:11 error input/unreadable'],
  ['a decimal comma in a list with commas', 'r.csv', csv(row('1', 'seat', '"55,13"')), '2:35 error input/unreadable'],
  [
    'a row of another batch',
    'r.csv',
    csv(row('1', 'seat', '55.13').replace(`,${BATCH},`, ',1999,')),
    '1:1 error results/other-batch',
  ],
  [
    'a piece of a list that is not in the batch',
    'r.csv',
    csv(row('1', 'seat', '55.13'), row('77', 'seat', '55.13')),
    '3:36 error results/unknown-serial',
  ],
  ['a surface of a list that is none', 'r.csv', csv(row('1', 'saet', '55.13')), '2:35 error results/unknown-feature'],
  [
    'a unit of a list that is none',
    'r.csv',
    csv(row('1', 'seat', '55.13', { unit: 'furlong' })),
    '2:41 error input/wrong-unit',
  ],
  [
    'a day of a list that is none',
    'r.csv',
    csv(row('1', 'seat', '55.13', { date: '14.12.2026' })),
    '2:49 error input/unreadable',
  ],
  [
    'an operation of a list that is none',
    'r.csv',
    csv(row('1', 'seat', '55.13', { operation: '7' })),
    '2:34 error results/unknown-operation',
  ],
  ['a quote of a list that is not closed', 'r.csv', csv(`"${row('1', 'seat', '55.13')}`), '2:1 error input/unreadable'],
]
