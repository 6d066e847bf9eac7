import { EXHAUST_LIMITS } from './exhaust-limits.ts'
import { type PortLimits, PRACTICE } from './port-threshold.ts'
import { TRAPPED_RATIO } from './time-area-targets.ts'

/** By the name of the rule and of the threshold in it: a works may set its own under `port-checks:` of the shop file. */
export const PORT_LIMITS: PortLimits = {
  ...EXHAUST_LIMITS,
  'acute-edge': {
    roof: {
      value: 45,
      unit: 'deg',
      meaning: 'least angle between the roof or floor of a window and the bore',
      source: PRACTICE,
    },
    side: {
      value: 40,
      unit: 'deg',
      meaning: 'least angle between the far side of a window and the bore',
      source: PRACTICE,
    },
  },
  'blowdown-in-class': {
    slack: { value: 0, unit: 'deg', meaning: 'how far outside what engines of the class run', source: PRACTICE },
  },
  'blowdown-time': {
    least: {
      value: 0.2,
      unit: 'ms',
      meaning: 'shortest blowdown in use',
      source: 'common practice, no source; 0.24 ms published of small tuned engines',
    },
    most: {
      value: 1,
      unit: 'ms',
      meaning: 'longest blowdown in use',
      source: 'common practice, no source; 0.52 ms published from one pressure trace',
    },
  },
  'boost-after-main': {
    least: { value: 0, unit: 'deg', meaning: 'least that a boost port opens after the mains', source: PRACTICE },
    most: { value: 6, unit: 'deg', meaning: 'most that a boost port opens after the mains', source: PRACTICE },
  },
  'boost-rise': {
    least: { value: 30, unit: 'deg', meaning: 'least rise of a boost stream', source: PRACTICE },
  },
  'duration-as-drawn': {
    most: {
      value: 0.5,
      unit: 'deg',
      meaning: 'most that a duration may differ from what its opening gives',
      source: 'rounding of a drawing: common practice, no source',
    },
  },
  'edge-falls-away': {
    most: {
      value: 0.02,
      unit: 'mm',
      meaning: 'most that an edge cut straight falls away from its highest point',
      source: PRACTICE,
    },
  },
  'far-wall-strike': {
    margin: { value: 1, unit: 'mm', meaning: 'least from the end of the cutter to the far wall', source: PRACTICE },
  },
  'floor-at-bottom': {
    masked: {
      value: 0.3,
      unit: 'mm',
      meaning: 'most that a floor lies below the crown at bottom dead centre',
      source: PRACTICE,
    },
    step: {
      value: 0.5,
      unit: 'mm',
      meaning: 'most that a floor lies above the crown at bottom dead centre',
      source: PRACTICE,
    },
  },
  'holder-clearance': {
    least: {
      value: 2,
      unit: 'mm',
      meaning: 'least between shank, holder or spindle and the part or its chuck',
      source: PRACTICE,
    },
  },
  'inlet-masked': {
    least: {
      value: 0,
      unit: 'mm',
      meaning: 'most of an inlet that the skirt may cover at top dead centre',
      source: 'derived: geometry',
    },
  },
  'land-to-flange': {
    least: { value: 1.5, unit: 'mm', meaning: 'least from a window to a larger band', source: PRACTICE },
  },
  'land-to-groove': {
    least: {
      value: 1.5,
      unit: 'mm',
      meaning: 'least from a window to a band cut deeper than its own',
      source: PRACTICE,
    },
    hopeless: { value: 1, unit: 'mm', meaning: 'the same, under which it is an error', source: PRACTICE },
  },
  'main-rise': {
    most: { value: 25, unit: 'deg', meaning: 'most rise of a main stream', source: PRACTICE },
  },
  'pair-symmetry': {
    depth: { value: 0.03, unit: 'mm', meaning: 'most that the edges of a pair differ in depth', source: PRACTICE },
    angle: {
      value: 0.2,
      unit: 'deg',
      meaning: 'most that the ports of a pair differ in azimuth and arc',
      source: PRACTICE,
    },
  },
  'porting-share': {
    most: { value: 0.75, unit: '', meaning: 'most of the circumference that the ports take', source: PRACTICE },
  },
  'ring-crosses-bridge': {
    relief: {
      value: 0.03,
      unit: 'mm',
      meaning: 'least relief of a bar on the bore side; 0: none is asked',
      source: 'published workshop notes',
    },
    most: {
      value: 0.1,
      unit: 'mm',
      meaning: 'most relief of a bar on the bore side',
      source: 'memory: Jennings, Bell',
    },
  },
  'ring-peg': {
    margin: { value: 5, unit: 'deg', meaning: 'least from a ring peg to a window', source: PRACTICE },
  },
  'short-circuit': {
    margin: {
      value: 15,
      unit: 'deg',
      meaning: 'least from where an unbroken stream meets the wall to the edge of the exhaust',
      source: PRACTICE,
    },
  },
  'shoulder-clearance': {
    least: { value: 0.5, unit: 'mm', meaning: 'least between the shank and a flange', source: PRACTICE },
  },
  'streams-meet': {
    most: {
      value: 0.5,
      unit: '',
      meaning: 'most that a port is turned back, as a share of its azimuth',
      source: 'derived: geometry',
    },
  },
  'thin-land': {
    least: { value: 2, unit: 'mm', meaning: 'least land between windows', source: PRACTICE },
    ringed: { value: 2.5, unit: 'mm', meaning: 'least land between windows that rings pass', source: PRACTICE },
    ofBore: { value: 0.1, unit: '', meaning: 'the same as a share of the bore', source: PRACTICE },
    hopeless: { value: 1, unit: 'mm', meaning: 'land under which it is an error', source: PRACTICE },
  },
  'thin-wall': {
    least: { value: 1, unit: 'mm', meaning: 'least wall that a port goes through', source: PRACTICE },
    ofBore: { value: 0.06, unit: '', meaning: 'the same as a share of the bore', source: PRACTICE },
  },
  'timing-in-class': {
    slack: { value: 0, unit: 'deg', meaning: 'how far outside what engines of the class run', source: PRACTICE },
  },
  'transfer-near-exhaust': {
    distance: {
      value: 3,
      unit: 'mm',
      meaning: 'least land between the nearest transfer and the exhaust',
      source: PRACTICE,
    },
    angle: { value: 10, unit: 'deg', meaning: 'the same as an angle', source: PRACTICE },
  },
  'transfer-width': {
    most: {
      value: 0.45,
      unit: '',
      meaning: 'widest transfer window as a share of the bore, with rings',
      source: PRACTICE,
    },
  },
  'trapped-ratio': {
    least: {
      value: TRAPPED_RATIO.from,
      unit: '',
      meaning: 'lowest trapped compression ratio',
      source: TRAPPED_RATIO.source,
    },
    most: {
      value: TRAPPED_RATIO.to,
      unit: '',
      meaning: 'highest trapped compression ratio',
      source: TRAPPED_RATIO.source,
    },
  },
  'windows-overlap': {
    least: { value: 0, unit: 'mm', meaning: 'least wall between two windows', source: 'derived: geometry' },
  },
}
