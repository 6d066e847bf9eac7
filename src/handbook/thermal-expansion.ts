import { type Formula, formula } from '../formula.ts'
import type { Celsius } from '../units.ts'
import type { MaterialGroup } from './materials.ts'

/** Where sizes are true: ISO 1. */
export const REFERENCE_TEMPERATURE: Celsius = 20

const STEEL = 11.7

export const EXPANSION_SOURCE = 'memory: materials handbooks'

/** Linear expansion near room temperature, 1e-6/K. */
export const EXPANSION: Readonly<Record<MaterialGroup, number>> = {
  'heat-treatable steel': STEEL,
  'nitriding steel': STEEL,
  'case-hardening steel': STEEL,
  'unalloyed steel': STEEL,
  'microalloyed steel': STEEL,
  'bearing steel': STEEL,
  'free-cutting steel': STEEL,
  'structural steel': STEEL,
  'stainless steel': 10.5,
  'grey iron': 11,
  'ductile iron': 11.5,
  'wrought aluminium': 23,
  'cast aluminium': 20,
  bronze: 18,
}

export const warmReading: Formula<{ alpha: '1e-6/K'; D: 'mm'; dT: 'K' }, 'µm'> = formula({
  symbol: 'e_T',
  meaning: 'how much larger a warm part reads',
  unit: 'µm',
  expression: 'alpha * D * dT / 1000',
  inputs: {
    alpha: { meaning: 'thermal expansion', unit: '1e-6/K', over: 0 },
    D: { meaning: 'size measured', unit: 'mm', over: 0 },
    dT: { meaning: 'part warmer than the gauge by', unit: 'K' },
  },
  source: 'derived: linear expansion',
  example: { given: { alpha: 11.7, D: 48, dT: 5 }, gives: 2.81 },
  value: ({ alpha, D, dT }) => (alpha * D * dT) / 1000,
})
