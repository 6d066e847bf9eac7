import type { Band } from '../../src/band.ts'
import type { Part } from '../../src/part/part.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'

const band = (name: string, nominal: number, from: number, to: number, path: string): Band => ({
  name,
  size: { nominal, lower: nominal - 0.02, upper: nominal, written: String(nominal) },
  from,
  to: { nominal: to, lower: to - 0.05, upper: to + 0.05, written: String(to) },
  path,
})

/** An invented sleeve, Ø60 over a bore of 52: the sizes of the thin-wall example. */
export const SLEEVE: Part = {
  number: 'OX-077-01',
  title: 'Valve sleeve',
  revision: 'A',
  kind: 'sleeve',
  material: { grade: '42CrMo4', written: '42CrMo4', hardness: 320, temper: 620 },
  length: { nominal: 80, lower: 79.95, upper: 80.05, written: '80 ±0.05' },
  outside: [band('flange', 66, 0, 4, '/body/outside/0'), band('seat', 60, 4, 80, '/body/outside/1')],
  bore: [band('bore', 52, 0, 80, '/body/bore')],
  top: { path: '/body/top' },
  bottom: { path: '/body/bottom' },
  hardening: {
    process: 'gas nitriding',
    hardness: { least: 500 },
    depth: { least: 0.2 },
    masked: [],
    path: '/hardening',
  },
  stock: {},
  ports: [],
  generalTolerance: 'm',
  waive: [],
  features: [],
  places: new Map([
    ['', { file: 'sleeve.yaml', line: 1, column: 1 }],
    ['/material', { file: 'sleeve.yaml', line: 2, column: 1 }],
    ['/material/grade', { file: 'sleeve.yaml', line: 2, column: 12 }],
    ['/material/temper', { file: 'sleeve.yaml', line: 2, column: 40 }],
    ['/hardening', { file: 'sleeve.yaml', line: 9, column: 1 }],
    ['/hardening/process', { file: 'sleeve.yaml', line: 9, column: 13 }],
    ['/hardening/hardness', { file: 'sleeve.yaml', line: 9, column: 37 }],
    ['/hardening/depth', { file: 'sleeve.yaml', line: 9, column: 59 }],
  ]),
  file: 'sleeve.yaml',
}

export const SHOP: Shop = BUILT_IN_SHOP

/** The sleeve with another hardening, or another material. */
export const hardenedBy = (hardening: Partial<NonNullable<Part['hardening']>>, more: Partial<Part> = {}): Part => ({
  ...SLEEVE,
  ...more,
  ...(SLEEVE.hardening && { hardening: { ...SLEEVE.hardening, ...hardening } }),
})
