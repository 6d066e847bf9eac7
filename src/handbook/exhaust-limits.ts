import { type PortLimits, PRACTICE } from './port-threshold.ts'
import { BRIDGED_EXHAUST_WIDTH, BRIDGED_WINDOW_WIDTH, EXHAUST_WIDTH } from './time-area-targets.ts'

/** Thresholds of the rules about exhausts and auxiliary exhausts. */
export const EXHAUST_LIMITS: PortLimits = {
  'aux-exhaust-timing': {
    after: {
      value: 0,
      unit: 'deg',
      meaning: 'least that an auxiliary exhaust opens after the exhaust',
      source: PRACTICE,
    },
    before: {
      value: 1,
      unit: 'deg',
      meaning: 'least that an auxiliary exhaust opens before the transfers',
      source: PRACTICE,
    },
  },
  'exhaust-before-transfer': {
    least: { value: 5, unit: 'deg', meaning: 'least blowdown', source: PRACTICE },
  },
  'exhaust-width': {
    most: {
      value: EXHAUST_WIDTH.to,
      unit: '',
      meaning: 'widest exhaust window as a share of the bore, with rings',
      source: EXHAUST_WIDTH.source,
    },
    extreme: {
      value: 0.7,
      unit: '',
      meaning: 'the same, extreme',
      source: "Jennings, Two-Stroke Tuner's Handbook, 1973",
    },
    window: {
      value: BRIDGED_WINDOW_WIDTH.to,
      unit: '',
      meaning: 'widest window of a bridged exhaust as a share of the bore, with rings',
      source: BRIDGED_WINDOW_WIDTH.source,
    },
    bridged: {
      value: BRIDGED_EXHAUST_WIDTH.to,
      unit: '',
      meaning: 'widest bridged exhaust, bars and all, as a share of the bore, with rings',
      source: BRIDGED_EXHAUST_WIDTH.source,
    },
  },
  'free-port': {
    overlap: {
      value: 1,
      unit: 'mm',
      meaning: 'least that the skirt covers the exhaust at top dead centre',
      source: 'published workshop notes',
    },
  },
  'ring-corner': {
    least: { value: 2, unit: 'mm', meaning: 'least corner radius of a window that rings pass', source: PRACTICE },
    ofWidth: { value: 0.15, unit: '', meaning: 'the same as a share of the width', source: PRACTICE },
  },
}
