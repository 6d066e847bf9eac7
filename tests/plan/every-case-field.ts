import type { CasePlan } from '../../src/hardening/case-plan.ts'
import type { EveryField } from './every-field-of.ts'

const ORIGIN = { from: 'measured', source: 'shop: measured on 24 pieces' } as const
const FIGURE = { figure: 'growth per side', value: 0.01, unit: 'mm', ...ORIGIN } as const
const SPREAD = { least: 1, nominal: 2, most: 3 }
const RANGE = { least: 1, most: 3 }
const BAND = { low: 500, expected: 550, high: 600 }

/** What the hardener is asked for, with a figure for every key. */
export const EVERY_CASE_FIELD: EveryField<CasePlan> = {
  process: 'gas nitriding',
  ordered: RANGE,
  growth: {
    outside: { ...SPREAD, ...ORIGIN },
    bore: { ...SPREAD, ...ORIGIN },
    bands: [{ surface: 'seat', side: 'outside', takesCase: true, growth: { ...SPREAD, ...ORIGIN }, wallMoves: SPREAD }],
    face: { ...SPREAD, ...ORIGIN },
    along: { ...SPREAD, ...ORIGIN },
    sections: [{ to: 92, share: 1 }],
  },
  records: [{ record: 'gas nitriding, 2026-06-12, 18 pieces', used: true, why: 'growth' }],
  left: RANGE,
  asked: 0.2,
  basis: [FIGURE],
  definition: 'core + 50 HV',
  time: SPREAD,
  temperature: 520,
  stages: [
    { temperature: 505, hours: 9 },
    { temperature: 540, hours: 27 },
  ],
  compoundLayer: { nominal: 0.01, most: 0.015, kept: 0.011 },
  decidedBy: '0.20 mm to be left, with up to 0.097 mm a side off seat',
  surfaceHardness: 650,
  coreHardness: 320,
  profile: [{ depth: 0, ...BAND }],
  testLoad: 'HV0.5',
  treated: { outside: true, bore: true },
  limit: { least: 0.75, by: 'wall', because: 'the wall bears it', source: 'table' },
  limitHardness: 370,
  hardnessAfter: [{ surface: 'seat', off: SPREAD, least: BAND, nominal: BAND, most: BAND }],
  order: {
    term: 'NHD',
    hardness: 550,
    surfaceLeast: 560,
    surfaceLoad: 'HV1',
    rockwell: { HRC: 60, from: 0.8 },
    barHardness: 300,
    temper: 620,
    stressRelief: 570,
    stressReliefWindow: { least: 540, most: 570 },
    masked: ['bottom'],
  },
  quenched: {
    quench: { way: 'plug', called: 'on a plug', why: 'it would come oval', ovality: SPREAD, source: 'estimate' },
    temper: RANGE,
    austenite: RANGE,
  },
}
