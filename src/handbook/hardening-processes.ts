import type { Celsius, Hour, Millimetre, Vickers } from '../units.ts'
import type { DepthTerm } from './case-tolerance.ts'
import type { ChoiceColumn } from './hardening-choice.ts'

/** The window of a process. A process without `hours` is over in seconds; one without `usual` follows the works' habit. */
export type HardeningWindow = {
  readonly process: string
  readonly term: DepthTerm
  readonly column: ChoiceColumn
  readonly temperature: { readonly least: Celsius; readonly usual?: Celsius; readonly most: Celsius }
  /** Depth that is usually ordered, mm. */
  readonly depth: { readonly least: Millimetre; readonly most: Millimetre }
  /** Usual time at temperature. */
  readonly hours?: { readonly least: Hour; readonly most: Hour }
  readonly source: string
}

export const HARDENING_WINDOWS: readonly HardeningWindow[] = [
  {
    process: 'gas nitriding',
    term: 'NHD',
    column: 'nitride',
    temperature: { least: 480, most: 590 },
    depth: { least: 0.1, most: 0.6 },
    hours: { least: 5, most: 100 },
    source:
      'table of diffusion treatments, ASM type, 480 to 590 °C; Encyclopaedia Britannica, 5 to 100 h; depth job-shop capability, 0.6 mm at most',
  },
  {
    process: 'plasma nitriding',
    term: 'NHD',
    column: 'nitride',
    temperature: { least: 340, most: 565 },
    depth: { least: 0.1, most: 0.5 },
    hours: { least: 5, most: 100 },
    source: 'table of diffusion treatments, ASM type; time as gas nitriding or shorter; depth memory',
  },
  {
    process: 'salt-bath nitriding',
    term: 'NHD',
    column: 'nitride',
    temperature: { least: 510, usual: 540, most: 565 },
    depth: { least: 0.05, most: 0.2 },
    hours: { least: 1, most: 4 },
    source:
      'table of diffusion treatments, ASM type, 510 to 565 °C; 4 h normal limit, teaching text of low reliability; depth a trade text on salt baths, 0.1 to 0.2 mm',
  },
  {
    process: 'nitrocarburising',
    term: 'NHD',
    column: 'nitrocarburise',
    temperature: { least: 525, usual: 570, most: 625 },
    depth: { least: 0.1, most: 0.3 },
    hours: { least: 2, most: 6 },
    source: 'encyclopaedic text on ferritic nitrocarburising, 525 to 625 °C; time and depth memory',
  },
  {
    process: 'carburising',
    term: 'CHD',
    column: 'carburise',
    temperature: { least: 850, usual: 930, most: 980 },
    depth: { least: 0.2, most: 1.5 },
    hours: { least: 0.5, most: 30 },
    source: 'common practice, no source; depth a contract hardener, 0.2 to 1.5 mm',
  },
  {
    process: 'induction hardening',
    term: 'SHD',
    column: 'induction',
    temperature: { least: 850, usual: 900, most: 1000 },
    depth: { least: 1, most: 5 },
    source: 'common practice, no source; depth memory, 1 to 5 mm by frequency',
  },
]

export const hardeningWindow = (process: string): HardeningWindow | undefined =>
  HARDENING_WINDOWS.find(window => window.process === process)

const DEFINITIONS: { readonly [term in DepthTerm]: string } = {
  NHD: 'nitriding hardness depth: from the surface as nitrided to core hardness + 50 HV, HV0.5 (ISO 18203)',
  CHD: 'case hardening depth: from the surface as hardened to 550 HV1 (ISO 18203)',
  SHD: 'surface hardening depth: from the surface as hardened to 80 % of the least surface hardness asked, HV1 (ISO 18203)',
}

/**
 * What a depth means. The definition goes on every order: a depth without it is no depth, and a share of a hardness is read
 * in two ways unless its figure stands beside it.
 */
export const depthDefinition = (term: DepthTerm, limit?: Vickers): string =>
  term === 'SHD' && limit !== undefined
    ? DEFINITIONS.SHD.replace('80 %', `${limit.toFixed(0)} HV1, which is 80 %`).replace(', HV1 (', ' (')
    : DEFINITIONS[term]
