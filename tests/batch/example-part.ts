import type { DrawnSize } from '../../src/limits.ts'
import type { Part } from '../../src/part/part.ts'
import type { Process } from '../../src/process.ts'
import type { Operation, Purpose } from '../../src/route/operation.ts'

/** Parts and routes to plan with: invented, of the Oxmere works. */

export const drawn = (written: string, nominal: number, lower: number, upper: number): DrawnSize => ({
  written,
  nominal,
  lower,
  upper,
})

const bare = {
  stock: {},
  ports: [],
  generalTolerance: 'm',
  waive: [],
  features: [],
  places: new Map(),
  file: 'liner.yaml',
} as const

/** A nitrided liner, 62 h9 flange and 55 g6 seat, bored 48 H6. */
export const NITRIDED_LINER: Part = {
  ...bare,
  number: 'OX-098-21',
  title: 'Cylinder liner',
  revision: 'B',
  kind: 'liner',
  material: { grade: '42CrMo4', written: '42CrMo4', hardness: 300, temper: 620 },
  length: drawn('92 ±0.05', 92, 91.95, 92.05),
  outside: [
    {
      name: 'flange',
      size: drawn('62 h9', 62, 61.926, 62),
      from: 0,
      to: drawn('4', 4, 3.9, 4.1),
      path: '/body/outside/0',
    },
    {
      name: 'seat',
      size: drawn('55 g6', 55, 54.971, 54.99),
      from: 4,
      to: drawn('92', 92, 91.7, 92.3),
      roughness: 0.8,
      runout: 0.015,
      path: '/body/outside/1',
    },
  ],
  bore: [
    {
      name: 'bore',
      size: drawn('48 H6', 48, 48, 48.016),
      from: 0,
      to: drawn('92', 92, 91.7, 92.3),
      roughness: 0.3,
      cylindricity: 0.006,
      path: '/body/bore',
    },
  ],
  top: { roughness: 0.8, flatness: 0.01, path: '/body/top' },
  bottom: { path: '/body' },
  hardening: {
    process: 'gas nitriding',
    hardness: { least: 550 },
    depth: { least: 0.2 },
    masked: [],
    path: '/hardening',
  },
}

/** A plain honed liner of grey iron. */
export const IRON_LINER: Part = {
  ...bare,
  number: 'OX-112-03',
  title: 'Pump liner',
  revision: 'A',
  kind: 'liner',
  material: { grade: 'EN-GJL-250', written: 'EN-GJL-250' },
  length: drawn('110 ±0.1', 110, 109.9, 110.1),
  outside: [
    {
      name: 'flange',
      size: drawn('78 h11', 78, 77.81, 78),
      from: 0,
      to: drawn('6', 6, 5.9, 6.1),
      path: '/body/outside/0',
    },
    {
      name: 'seat',
      size: drawn('70 h7', 70, 69.97, 70),
      from: 6,
      to: drawn('110', 110, 109.7, 110.3),
      roughness: 1.6,
      path: '/body/outside/1',
    },
  ],
  bore: [
    {
      name: 'bore',
      size: drawn('60 H7', 60, 60, 60.03),
      from: 0,
      to: drawn('110', 110, 109.7, 110.3),
      roughness: 0.6,
      cylindricity: 0.015,
      path: '/body/bore',
    },
  ],
  top: { roughness: 1.6, flatness: 0.02, path: '/body/top' },
  bottom: { path: '/body' },
}

type Row = readonly [Purpose, Process, readonly string[]]

const operations = (rows: readonly Row[]): readonly Operation[] =>
  rows.map(([purpose, process, surfaces], index) => ({
    number: 10 * (index + 1),
    purpose,
    name: purpose.replaceAll('-', ' '),
    process,
    place: process === 'nitride' ? 'outside' : 'house',
    workCentre: process,
    holding: '',
    locatedBy: [],
    surfaces,
    because: [],
    waits: [],
    cautions: [],
  }))

const PORTS = ['exhaust', 'main transfer', 'boost']

export const NITRIDED_ROUTE: readonly Operation[] = operations([
  ['saw-blanks', 'saw', ['length']],
  ['rough-turn', 'turn', ['flange', 'seat', 'bore', 'top', 'bottom', 'length']],
  ['stress-relieve', 'stress-relieve', []],
  ['finish-turn', 'turn', ['flange', 'seat', 'bore', 'top', 'bottom', 'length']],
  ['mill-ports', 'mill', PORTS],
  ['deburr-soft', 'deburr', PORTS],
  ['nitride', 'nitride', []],
  ['grind-outside', 'grind', ['seat', 'top']],
  ['grind-bore', 'grind', ['bore']],
  ['hone-bore', 'hone', ['bore']],
  ['deburr-ports', 'deburr', PORTS],
  ['final-inspection', 'inspect', []],
])

export const IRON_ROUTE: readonly Operation[] = operations([
  ['saw-blanks', 'saw', ['length']],
  ['rough-turn', 'turn', ['flange', 'seat', 'bore', 'top', 'bottom', 'length']],
  ['finish-turn', 'turn', ['flange', 'seat', 'bore', 'top', 'bottom', 'length']],
  ['hone-bore', 'hone', ['bore']],
  ['final-inspection', 'inspect', []],
])
