import { materialOf } from './materials.ts'

type DensityEntry = { readonly density: number; readonly source: string; readonly note?: string }

const USUAL_STEEL: DensityEntry = { density: 7.85, source: 'memory: usual value of steel' }
const NITRIDING_STEEL: DensityEntry = { density: 7.7, source: 'memory: EN 10085, aluminium lightens it' }
const SUPPLIER = 'data sheet of a steel supplier'

/** Density at room temperature, g/cm³, by grade. */
export const DENSITIES: Readonly<Record<string, DensityEntry>> = {
  '42CrMo4': { density: 7.84, source: SUPPLIER },
  '34CrMo4': USUAL_STEEL,
  '50CrMo4': USUAL_STEEL,
  '34CrNiMo6': USUAL_STEEL,
  '30CrNiMo8': { density: 7.76, source: 'technical card of a steel maker' },
  '31CrMoV9': { density: 7.8, source: 'memory: usual value', note: 'one supplier has 7.73' },
  '34CrAlNi7-10': NITRIDING_STEEL,
  '34CrAlMo5-10': NITRIDING_STEEL,
  '41CrAlMo7-10': NITRIDING_STEEL,
  '32CrMo12': USUAL_STEEL,
  '33CrMoV12-9': { density: 7.8, source: 'memory: usual value' },
  '18CrNiMo7-6': USUAL_STEEL,
  '15NiCr13': USUAL_STEEL,
  C15: USUAL_STEEL,
  C60: { density: 7.84, source: 'memory: usual value' },
  '16MnCr5': { density: 7.85, source: SUPPLIER },
  '20MnCr5': USUAL_STEEL,
  C45: { density: 7.85, source: SUPPLIER },
  '38MnVS6': USUAL_STEEL,
  '100Cr6': { density: 7.81, source: 'memory: bearing makers' },
  '100CrMo7': { density: 7.81, source: 'memory: bearing makers' },
  X20Cr13: { density: 7.7, source: 'memory: EN 10088-1' },
  X46Cr13: { density: 7.73, source: 'data sheet of a steel maker' },
  '11SMnPb30': { density: 7.88, source: 'memory: lead weighs more' },
  '11SMn30': USUAL_STEEL,
  '11SMnPb37': USUAL_STEEL,
  S355: USUAL_STEEL,
  'EN-GJL-250': { density: 7.2, source: 'memory: EN 1561' },
  'EN-GJL-300': { density: 7.25, source: 'memory: EN 1561' },
  'EN-GJS-700-2': { density: 7.2, source: 'memory: EN 1563' },
  'EN-GJS-400-15': { density: 7.1, source: 'memory: EN 1563' },
  'EN-GJS-600-3': { density: 7.2, source: 'data sheet of a bar foundry' },
  'EN AW-6082': { density: 2.7, source: 'data sheets of aluminium suppliers, 2.70 to 2.71' },
  'EN AW-2618A': { density: 2.76, source: 'memory: EN 573', note: 'one public data base prints 2.9 for 2618' },
  AlSi12CuNiMg: { density: 2.7, source: 'foundry table of 336.0' },
  'CuSn7Zn4Pb7-C': { density: 8.8, source: 'memory: EN 1982' },
  CuSn8: { density: 8.8, source: 'data sheet of a copper supplier' },
  'CuSn12-C': { density: 8.7, source: 'memory: EN 1982, 8.6 to 8.8' },
}

export const densitySource = (grade: string): string =>
  DENSITIES[materialOf(grade)?.grade ?? grade]?.source ?? 'no density is listed'

/** Density of a grade, g/cm³. Throws for a name that is no grade: the part's reader has refused those. */
export function densityOf(grade: string): number {
  const entry = DENSITIES[materialOf(grade)?.grade ?? grade]
  if (!entry) throw new RangeError(`no density for "${grade}"`)
  return entry.density
}
