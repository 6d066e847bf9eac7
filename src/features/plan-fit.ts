import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { materialOf } from '../handbook/materials.ts'
import {
  coldClearance,
  LINER_TEMPERATURE,
  OIL_FILM,
  PISTON_EXPANSION,
  PISTON_PLACES,
  PISTON_SOURCE,
  type PistonPlace,
  warmClearance,
} from '../handbook/piston.ts'
import { EXPANSION, EXPANSION_SOURCE, REFERENCE_TEMPERATURE } from '../handbook/thermal-expansion.ts'
import { fromHandbook, fromPart, told } from '../known.ts'
import type { Limits } from '../limits.ts'
import { type Part, placeOf } from '../part/part.ts'
import { type Celsius, type Millimetre, millimetres } from '../units.ts'
import { type Notebook, openNotebook, type Working } from '../working.ts'
import { isIron } from './plan-piston.ts'

/** Between a piston and the bore that it runs in, on diameter. */
export type FitRow = {
  readonly place: PistonPlace
  readonly band: string
  readonly piston: Limits
  readonly cold: { readonly least: Millimetre; readonly most: Millimetre }
  /** What the piston must have cold so that the oil film is left when both are warm. */
  readonly needed: Millimetre
  readonly warm: { readonly least: Millimetre; readonly most: Millimetre }
  readonly usual: { readonly least: Millimetre; readonly most: Millimetre }
  readonly temperature: Celsius
}

export type Fit = {
  /** The part that it runs in. */
  readonly mate: string
  readonly bore: Limits
  readonly rows: readonly FitRow[]
}

/** The clearance of a piston in the liner that its file names, cold and warm, place by place. */
export function planFit(part: Part): {
  readonly fit?: Fit
  readonly findings: readonly Finding[]
  readonly workings: readonly Working[]
} {
  const { fitted, kind } = part
  if (!fitted || kind !== 'piston') return { findings: [], workings: [] }
  const notebook = openNotebook()
  const rows = placesOf(part).map(({ place, band }) => rowAt({ part, notebook, place, band }))
  const { nominal, lower, upper } = fitted.bore
  return {
    fit: { mate: fitted.number, bore: { nominal, lower, upper }, rows },
    findings: rows.flatMap(row => judged(part, row)),
    workings: notebook.workings,
  }
}

/** The first band is the crown land, the last the skirt; a band between them is a ring land. */
function placesOf({ outside }: Part): readonly { readonly place: PistonPlace; readonly band: string }[] {
  const [first, last] = [outside[0], outside.at(-1)]
  return [
    ...(first && first !== last ? [{ place: 'crown land' as const, band: first.name }] : []),
    ...outside.slice(1, -1).map(({ name }) => ({ place: 'second land' as const, band: name })),
    ...(last
      ? [
          { place: 'skirt top' as const, band: last.name },
          { place: 'skirt' as const, band: last.name },
        ]
      : []),
  ]
}

function rowAt({
  part,
  notebook,
  place,
  band,
}: {
  readonly part: Part
  readonly notebook: Notebook
  readonly place: PistonPlace
  readonly band: string
}): FitRow {
  const { fitted, outside, features, material } = part
  const iron = isIron(material.grade)
  const known = PISTON_PLACES.find(row => row.place === place)
  const { temperature, usual } = known?.[iron ? 'iron' : 'aluminium'] ?? {
    temperature: REFERENCE_TEMPERATURE,
    usual: [0, 0],
  }
  const size = outside.find(({ name }) => name === band)?.size ?? { nominal: 0, lower: 0, upper: 0 }
  const shape = features.find(feature => feature.kind === 'oval')
  const less = place === 'skirt top' && shape?.kind === 'oval' ? shape.taper : 0
  const piston = { nominal: size.nominal - less, lower: size.lower - less, upper: size.upper - less }
  const bore = fitted?.bore ?? piston
  const [own, liner] = [expansionOf(material.grade), expansionOf(fitted?.grade ?? '')]
  const heat = {
    ...told(fromHandbook(EXPANSION_SOURCE), { aP: own, aL: liner }),
    ...told(fromHandbook(PISTON_SOURCE), {
      TP: temperature - REFERENCE_TEMPERATURE,
      TL: LINER_TEMPERATURE - REFERENCE_TEMPERATURE,
    }),
  }
  const about = { about: `${place} in ${fitted?.number}` }
  const mate = fromPart(`fits: ${fitted?.number}`)
  const warm = (D: number, d: number): number =>
    notebook.use(warmClearance, { ...told(mate, { D }), ...told(fromPart(band), { d }), ...heat }, about)
  const needed = notebook.use(
    coldClearance,
    { ...told(mate, { D: bore.lower }), ...heat, ...told(fromHandbook(PISTON_SOURCE), { film: OIL_FILM }) },
    about,
  )
  const [low, high] = usual.map(perMillimetre => millimetres(perMillimetre * bore.nominal))
  return {
    place,
    band,
    piston,
    cold: { least: bore.lower - piston.upper, most: bore.upper - piston.lower },
    needed,
    warm: { least: warm(bore.lower, piston.upper), most: warm(bore.upper, piston.lower) },
    usual: { least: low ?? 0, most: high ?? 0 },
    temperature,
  }
}

const expansionOf = (grade: string): number =>
  PISTON_EXPANSION[grade] ?? EXPANSION[materialOf(grade)?.group ?? 'heat-treatable steel']

function judged(part: Part, { place, band, cold, needed, usual, temperature }: FitRow): readonly Finding[] {
  const path = part.outside.find(({ name }) => name === band)?.path ?? ''
  const said = (severity: Finding['severity'], message: string, hint: string): readonly Finding[] => [
    { code: 'feature/clearance', severity, message, at: placeOf(part, path), hint },
  ]
  if (cold.least < needed - 1e-9)
    return said(
      cold.least < needed - OIL_FILM ? 'error' : 'warning',
      `${place}: ${fixed(cold.least, 3)} mm of clearance cold at the least in ${part.fitted?.number}; at ${temperature} °C ${fixed(needed, 3)} mm keep the oil film`,
      `turn ${band} smaller by ${fixed(needed - cold.least, 3)} mm, or hold piston and bore closer`,
    )
  if (cold.most > usual.most * LOOSE)
    return said(
      'warning',
      `${place}: ${fixed(cold.most, 3)} mm of clearance cold at the most in ${part.fitted?.number}; ${fixed(usual.least, 3)} to ${fixed(usual.most, 3)} mm is usual`,
      'turn it larger, or hold piston and bore closer',
    )
  return []
}

/** Half as much again as is usual rattles. Common practice, no source. */
const LOOSE = 1.5
