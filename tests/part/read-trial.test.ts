import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { printed } from '../../src/finding.ts'
import { readTrial } from '../../src/part/read-trial.ts'
import { judgeTrial } from '../../src/trial/judge-trial.ts'

const demo = readFileSync('parts/trial-2655.yaml', 'utf8')

/** The findings of the demo trial with one thing written otherwise, as the command has them. */
function found(from: string, to: string): readonly string[] {
  if (!demo.includes(from)) throw new Error(`${from} is not in the demo`)
  const { trial, findings } = readTrial(demo.replace(from, to), 't.yaml')
  const judged = trial ? judgeTrial(trial).findings : []
  return [...findings, ...judged].map(finding => printed(finding).split('\n')[0] ?? '')
}

it('finds nothing in the demo but the run that was not steady', () => {
  expect(found('engine', 'engine')).toEqual([expect.stringContaining('trial/doubtful  run 8: not steady')])
})

it.each([
  ['engine: drainage', 'engin: drainage', '3:3  error  input/unknown-key  unknown key "engin"'],
  ['  engine: drainage pump engine 4\n', '', '3:3  error  input/missing-key  trial has no "engine"'],
  ['  worthwhile: 1 %', '  # worthwhile: 1 %', '3:3  error  input/missing-key  trial has no "worthwhile"'],
  ['worthwhile: 1 %', 'worthwhile: 1', '6:15  error  input/out-of-range  worthwhile 1 is 100 % of power'],
  [
    'worthwhile: 1 %',
    'worthwhile: 80 %',
    '6:15  error  input/out-of-range  worthwhile must be over 0 up to 0.5, got 0.8',
  ],
  ['worthwhile: 1 %', 'worthwhile: 1,5 %', '6:15  error  input/decimal-comma  worthwhile has a comma: "1,5 %"'],
  [
    'worthwhile: 1 %',
    'worthwhile: 40 rpm',
    '6:15  error  input/wrong-unit  worthwhile is a fraction, got "40 rpm", a speed',
  ],
  ['date: 2027-02-09', 'date: 2027-02-30', '4:9  error  input/unreadable  date "2027-02-30" is no day'],
  ['verdict: speed', 'verdict: torque', '7:12  error  input/not-one-of  verdict "torque" is not known'],
  [
    'verdict: speed\n  fittings-each: 4',
    'verdict: power\n  fittings-each: 4',
    '11:14  error  input/missing-key  power of a pump wants its efficiency',
  ],
  ['fittings-each: 4', 'fittings-each: 1', '8:18  error  input/out-of-range  fittings-each must be at least 2, got 1'],
  [
    'fittings-each: 4',
    'fittings-each: 3',
    '9:10  error  trial/order  order has 4 fittings each, and fittings-each is 3',
  ],
  [
    'fittings-each: 4\n  order: ABBABAAB',
    'fittings-each: 3',
    '3:3  warning  trial/extended  4 fittings each were run, and 3 were settled beforehand',
  ],
  ['order: ABBABAAB', 'order: ABBABAAX', '9:10  error  trial/order  order names "X", and the liners are A, B'],
  [
    'order: ABBABAAB',
    'order: ABBABAABB',
    '9:10  error  trial/order  order has 5 fittings each, and fittings-each is 4',
  ],
  [
    'order: ABBABAAB',
    'order: ABABABAB',
    '9:10  warning  trial/order  order is ABABABAB, and the runs were made as ABBABAAB',
  ],
  ['correction: SAE J1349', 'correction: my own', '10:15  error  input/not-one-of  correction "my own" is not known'],
  ['load: {kind: pump, setting: orifice 18, static-lift: 3 %}\n', '', '2:1  error  input/missing-key  load is missing'],
  ['kind: pump', 'kind: dynamo', '11:14  error  input/not-one-of  kind "dynamo" is not known'],
  ['static-lift: 3 %', 'diameter: 250', '11:51  error  input/not-used  a pump has no diameter'],
  [
    'static-lift: 3 %',
    'static-lift: 12 %',
    '3:3  warning  trial/load  12 % of the head does not go with speed: the cube of speed is good for 5 %',
  ],
  ['static-lift: 3 %', 'static-lift: 3', '11:54  error  input/out-of-range  static-lift must be from 0 up to 1, got 3'],
  [
    '  B: {part: OX-098-21, revision: C, serial: 2655-02, run-in: 6, file: revision-C/OX-098-21.yaml}\n',
    '',
    '13:3  error  input/missing-key  liners has no "B"',
  ],
  [
    'revision: C, serial: 2655-02, run-in: 6',
    'revision: C, run-in: 1',
    '3:3  warning  trial/run-in  the liners were run in for 6 and 1 h',
  ],
  ['{part: OX-098-21, revision: C', '{revision: C', '14:6  error  input/missing-key  B has no "part"'],
  ['volume: 25', 'volume: 25 kg', '15:16  error  input/wrong-unit  "kg" in "25 kg" is no unit of volume'],
  ['density: 0.742', 'density: 742', '15:29  error  input/out-of-range  density must be from 0.5 to 1.2, got 742'],
  ['every: 60', 'every: 0', '16:8  error  input/out-of-range  every must be from 1 to 3600, got 0'],
  ['freedom: 8', 'freedom: 0', '20:43  error  input/out-of-range  freedom must be at least 1, got 0'],
  ['u: 0.05 %', 'u: 5', '18:30  error  input/out-of-range  u 5 is 500 % of power'],
  [
    '{fitting: 1, liner: A, at: "09:14"',
    '{fitting: 0, liner: A, at: "09:14"',
    '22:15  error  input/out-of-range  fitting must be at least 1, got 0',
  ],
  [
    '{fitting: 1, liner: A, at: "09:14"',
    '{fitting: 1, liner: B, at: "09:14"',
    '23:15  error  trial/fitting  fitting 1 has liner B in run 1 and A here',
  ],
  [
    '{fitting: 1, liner: A, at: "09:14"',
    '{fitting: 1, liner: C, at: "09:14"',
    '22:25  error  trial/fitting  there is no liner C',
  ],
  [
    '{fitting: 1, liner: A, at: "09:14"',
    '{fitting: 1, liner: A, at: "9.14"',
    '22:32  error  input/unreadable  "9.14" is no time of day',
  ],
  ['at: "09:21"', 'at: "08:21"', '23:32  error  trial/time  the run is earlier than the one before it'],
  [
    'at: "09:21"',
    'at: "09:21", block: 2',
    '23:48  error  trial/fitting  fitting 1 is in block 1 in run 1 and in 2 here',
  ],
  ['speed: 4187', 'speed: 4187 Hz', '23:48  error  input/wrong-unit  "Hz" in "4187 Hz" is no unit of speed'],
  ['speed: 4187, ', '', '23:5  error  input/missing-key  entry 2 of runs has no "speed"'],
  [
    'speed: 4187',
    'speed: 41870000',
    '23:48  error  input/out-of-range  speed must be over 0 up to 50000 rpm, got 41870000 rpm',
  ],
  [
    'pressure: 1008.4, humidity: 61, head: [149.3',
    'pressure: 100.84, humidity: 61, head: [149.3',
    '23:75  error  input/out-of-range  pressure must be from 500 to 1100, got 100.84',
  ],
  [
    'humidity: 61, head: [149.3',
    'humidity: 161, head: [149.3',
    '23:93  error  input/out-of-range  humidity must be from 0 to 100, got 161',
  ],
  [
    'pressure: 1008.4, humidity: 61, head: [149.3',
    'head: [149.3',
    '23:5  error  input/missing-key  of air, pressure and humidity only a part is given',
  ],
  [
    'head: [149.3, 149.5, 149.5]',
    'head: [149.3, 149.5]',
    '23:103  error  input/schema  head must have at least 3 of them, got 2',
  ],
  [
    'head: [149.3, 149.5, 149.5]',
    'head: 1495',
    '23:103  error  input/out-of-range  head must be from -40 up to 600 °C, got 1495 °C',
  ],
  ['air: 19.3', 'air: 24.3', '28:5  warning  trial/doubtful  run 7: air 6.1 K from where the block began'],
  [
    'pressure: 1007.0',
    'pressure: 1004.0',
    '36:5  warning  trial/doubtful  run 15: pressure 4.4 hPa from where the block began',
  ],
  [
    'fitting: 2, liner: B, at: "10:05"',
    'fitting: 3, liner: B, at: "10:05"',
    '24:15  error  trial/fitting  fitting 2 is missing before fitting 3',
  ],
  ['fuel: 52.4}', 'fuel: 52.4, force: 21}', '22:145  error  input/not-used  a pump has no force'],
  ['fuel: 52.4}', 'fuel: 52.4, remark: loud}', '22:138  error  input/unknown-key  unknown key "remark"'],
  ['fuel: 52.4}', 'fuel: 52.4, doubt: misfire}', '22:5  warning  trial/doubtful  run 1: misfire'],
  ['runs:\n', 'runs: []\nno-runs:\n', '22:1  error  input/unknown-key  unknown key "no-runs"'],
  [
    '  - {fitting: 1, liner: A',
    '\t- {fitting: 1, liner: A',
    '22:1  error  input/tab  a tab stands where the line is indented',
  ],
  [
    'kind: pump, setting: orifice 18, static-lift: 3 %',
    'kind: brake arm, tare: 2',
    '7:12  error  input/choose-one  the speed on a brake is set by hand: power is what is read',
  ],
])('%j written as %j is found', (from, to, finding) => {
  expect(found(from, to)).toContainEqual(`t.yaml:${finding}`)
})

it('wants the arm of a brake, and the force of every run', () => {
  const { findings } = readTrial(
    demo
      .replace('kind: pump, setting: orifice 18, static-lift: 3 %', 'kind: brake arm')
      .replace('verdict: speed', 'verdict: power'),
    't.yaml',
  )
  expect(findings.map(finding => printed(finding).split('\n')[0])).toEqual([
    't.yaml:11:14  error  input/missing-key  power on a brake wants the length of its arm',
    't.yaml:22:5  error  input/missing-key  force is missing in 16 of 16 runs: power is worked out from it',
  ])
})
