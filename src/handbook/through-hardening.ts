import { type Formula, formula } from '../formula.ts'
import type { Celsius, Millimetre, RockwellC } from '../units.ts'

/** A steel that is hardened right through by quench and temper. */
export type ThroughHardened = {
  readonly grade: string
  /** As it is bought in to the hardener: what the licensed treater is expected to work at. */
  readonly hardening: { readonly least: Celsius; readonly most: Celsius }
  readonly medium: string
  /** Hardness that a temper leaves, rising in temperature. */
  readonly tempers: readonly { readonly temper: Celsius; readonly hardness: RockwellC }[]
  /** Austenite left by the quench, per cent of volume. */
  readonly austenite: { readonly least: number; readonly most: number }
  readonly stressRelief: { readonly least: Celsius; readonly most: Celsius }
  /** Thickest wall, and thickest solid pin, that is hard to the middle. */
  readonly through: { readonly wall: Millimetre; readonly solid: Millimetre }
  /** Hottest that it may run, where that is not the temper less `SERVICE_MARGIN`. */
  readonly runsTo?: Celsius
  readonly source: string
}

const temper = (temper: Celsius, hardness: RockwellC) => ({ temper, hardness })
const BEARING = [temper(150, 63), temper(200, 62), temper(250, 59), temper(300, 57)]

const THROUGH_HARDENED: readonly ThroughHardened[] = [
  {
    grade: '100Cr6',
    hardening: { least: 830, most: 870 },
    medium: 'oil or a salt bath',
    tempers: BEARING,
    austenite: { least: 8, most: 15 },
    stressRelief: { least: 600, most: 650 },
    through: { wall: 10, solid: 20 },
    source: "steel maker's data sheet: harden 830 to 870 °C, temper row shifted by one place; wall, austenite memory",
  },
  {
    grade: '100CrMo7',
    hardening: { least: 840, most: 880 },
    medium: 'oil',
    tempers: BEARING.map(({ temper: at, hardness }) => temper(at, hardness + 0.5)),
    austenite: { least: 8, most: 15 },
    stressRelief: { least: 600, most: 650 },
    through: { wall: 20, solid: 40 },
    source: 'memory: as 100Cr6 and half a point harder, wall 20 to 25; solid twice the wall, estimate',
  },
  {
    grade: 'C60',
    hardening: { least: 810, most: 840 },
    medium: 'oil',
    tempers: [temper(150, 61), temper(200, 59), temper(250, 56), temper(300, 53)],
    austenite: { least: 2, most: 6 },
    stressRelief: { least: 550, most: 600 },
    through: { wall: 6, solid: 12 },
    runsTo: 150,
    source: 'memory: harden 810 to 840 °C in oil, wall to 6; solid twice the wall, estimate',
  },
  {
    grade: 'X46Cr13',
    hardening: { least: 980, most: 1030 },
    medium: 'gas, air or oil',
    tempers: [temper(100, 56), temper(200, 55), temper(300, 52)],
    austenite: { least: 5, most: 15 },
    stressRelief: { least: 600, most: 650 },
    through: { wall: 60, solid: 120 },
    runsTo: 400,
    source: "steel maker's data sheet: harden 980 to 1030 °C, 56, 55, 52 HRC at 100, 200, 300 °C; the rest memory",
  },
]

export const throughHardened = (grade: string): ThroughHardened | undefined =>
  THROUGH_HARDENED.find(row => row.grade === grade)

/** A part runs no hotter than its temper less this, or it grows and softens. Source: memory. */
export const SERVICE_MARGIN: Celsius = 50

/** Usual, and where the hardness asked lies higher; and for what runs hot: austenite broken down before grinding. Memory. */
export const TEMPERS = { cool: [180, 150], hot: [250, 240, 230] } as const

/** Linear between the rows; nothing outside them. */
export function hardnessTempered({ tempers }: ThroughHardened, at: Celsius): RockwellC | undefined {
  const above = tempers.findIndex(row => row.temper >= at)
  const [b, a] = [tempers[above], tempers[above - 1]]
  if (!b) return undefined
  if (b.temper === at) return b.hardness
  return a && a.hardness + ((b.hardness - a.hardness) * (at - a.temper)) / (b.temper - a.temper)
}

/** Skin that a quench leaves to be taken off, with the roughness before: in protective gas. Estimate. */
export const QUENCHED_SKIN: Millimetre = 0.03
/** Off axis in grinding, and bow for each 100 mm, that the choice of quench reckons with. Estimate. */
export const QUENCHED_SET_UP = { eccentricity: 0.02, bow: 0.03 } as const
export const QUENCHED_SOURCE =
  'estimate: stock of parts hardened through; off axis 0.02, bow 0.03 for each 100 mm, skin 0.03 in protective gas'

/** Per side, before any step of the shop. */
export const quenchedStock: Formula<{ e: 'mm'; o: 'mm'; b: 'mm'; skin: 'mm'; u: 'mm' }, 'mm'> = formula({
  symbol: 's_nom',
  meaning: 'grinding stock per side of a part hardened through',
  unit: 'mm',
  expression: 'e + o / 4 + b / 2 + skin + u',
  inputs: {
    e: { meaning: 'off axis in grinding', unit: 'mm', from: 0, upTo: 1 },
    o: { meaning: 'ovality from the quench', unit: 'mm', from: 0, upTo: 5 },
    b: { meaning: 'bow over the length', unit: 'mm', from: 0, upTo: 5 },
    skin: { meaning: 'skin that must go', unit: 'mm', from: 0, upTo: 1 },
    u: { meaning: 'growth that may come or not, per side', unit: 'mm', from: 0, upTo: 1 },
  },
  source: QUENCHED_SOURCE,
  example: { given: { e: 0.02, o: 0.18, b: 0.024, skin: 0.03, u: 0 }, gives: 0.107 },
  value: ({ e, o, b, skin, u }) => e + o / 4 + b / 2 + skin + u,
})

/** Linear growth for each per cent of austenite that a temper over 200 °C breaks down. Derived: 0.010 to 0.011 %. */
export const AUSTENITE_GROWTH = 0.000105
