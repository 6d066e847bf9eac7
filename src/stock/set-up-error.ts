import { DISTORTION, type Distortion } from '../handbook/distortion.ts'
import { faceTilt, formError, sumOfEccentricities } from '../handbook/stock-at-worst-place.ts'
import { routeProcessOf } from '../hardening/case-surfaces.ts'
import type { Part } from '../part/part.ts'
import type { Process } from '../process.ts'
import type { Operation } from '../route/operation.ts'
import type { Measured, Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'

/** Radial: how far the surface is off the axis it is cut about, and how far it is out of true. */
export type SetUpError = { readonly eccentricity: Millimetre; readonly form: Millimetre }
type Kind = 'outside' | 'bore' | 'face'

/** What the works measured for a process, on this grade before any grade. */
export function measuredFor<K extends keyof Measured>(
  part: Part,
  shop: Shop,
  process: Process,
  key: K,
): Measured | undefined {
  const fits = shop.measured.filter(
    row =>
      row.process === process &&
      row[key] !== undefined &&
      (row.grade === undefined || row.grade === part.material.grade),
  )
  return fits.find(({ grade }) => grade !== undefined) ?? fits[0]
}

export const measuredSource = ({ pieces, date, firm }: Measured): string =>
  `shop: measured on ${pieces} pieces, ${date}${firm ? `, ${firm}` : ''}`

/** Errors of one finishing operation, each taken from measurement, the shop file or common practice, and noted so. */
export function setUpError(
  notebook: Notebook,
  part: Part,
  shop: Shop,
  operations: readonly Operation[],
  operation: Operation,
  kind: Kind,
  surface: string,
): SetUpError {
  const about = { operation: operation.number, about: surface }
  if (operation.process === 'lap') return { eccentricity: 0, form: formFrom(notebook, part, DISTORTION.ground, about) }
  if (operation.process === 'hone') {
    const before = operation.locatedAs === 'ground' ? DISTORTION.ground : DISTORTION.fineBored
    return { eccentricity: 0, form: formFrom(notebook, part, before, about) }
  }
  const [between, holding] = locatingFigures(part, shop, operation, kind)
  const eccentricity = notebook.use(sumOfEccentricities, { e_1: between.value, e_2: holding.value }, about)
  const distortion = distortionBefore(notebook, part, shop, operations, about)
  if (kind !== 'face') return { eccentricity, form: formFrom(notebook, part, distortion, about) }
  const D = part.outside[0]?.size.nominal ?? 0
  const L = part.length.nominal
  return { eccentricity, form: notebook.use(faceTilt, { b: (distortion.bow * L) / 100, D, L }, about) }
}

type About = { readonly operation: number; readonly about: string }

const formFrom = (notebook: Notebook, part: Part, { ovality, bow }: Distortion, about: About): Millimetre =>
  notebook.use(formError, { o: ovality, b: (bow * part.length.nominal) / 100 }, about)

/** A figure of the set-up, the habit it is by default, and the measurement where there is one. */
export type SetUpFigure = {
  readonly figure: string
  readonly value: Millimetre
  readonly key: 'turnedOutsideToBore' | 'boreGrindingRunout' | 'mandrelRunout' | 'chuckRunout'
  readonly row?: Measured
}

/** Between the surface that locates and the surface cut, and of what holds the part. */
export function locatingFigures(
  part: Part,
  shop: Shop,
  operation: Operation,
  kind: Kind,
): readonly [SetUpFigure, SetUpFigure] {
  const from = (figure: string, key: SetUpFigure['key'], process?: 'turn' | 'grind'): SetUpFigure => {
    const row = process && measuredFor(part, shop, process, 'eccentricity')
    return { figure, key, value: row?.eccentricity ?? shop.habits[key], ...(row && { row }) }
  }
  const turned = from('turned outside to bore', 'turnedOutsideToBore', 'turn')
  if (kind === 'face') return [{ ...turned, value: 0 }, from('run-out of the chuck', 'chuckRunout')]
  // On a work blade the pin runs on the very surface that is ground (memory: Kovan, self-centred work sets itself true).
  if (operation.purpose === 'grind-outside' && operation.locatedBy.some(name => operation.surfaces.includes(name)))
    return [
      { ...turned, value: 0 },
      { ...from('run-out of the work blade', 'mandrelRunout'), value: 0 },
    ]
  // Turned and ground between the same centres there is nothing between the two.
  if (operation.purpose === 'grind-outside' && operation.locatedBy.length === 0)
    return [{ ...turned, value: 0 }, from('run-out of the centres', 'mandrelRunout', 'grind')]
  if (operation.purpose === 'grind-outside') return [turned, from('run-out of the mandrel', 'mandrelRunout', 'grind')]
  return [
    operation.locatedAs === 'ground' ? from('ground outside to its axis', 'boreGrindingRunout') : turned,
    from('run-out of the chuck', 'chuckRunout', 'grind'),
  ]
}

/** Out of true as the part comes to be finished: what is usual, what was measured, and what is used of the two. */
export type DistortionUsed = {
  readonly usual: Distortion
  readonly used: Distortion
  readonly ovality?: Measured
  readonly bow?: Measured
}

/** A measured bow is over the part, so it is brought to 100 mm here. */
export function distortionOf(part: Part, shop: Shop, operations: readonly Operation[]): DistortionUsed {
  const relieved = operations.some(({ purpose }) => purpose === 'stress-relieve')
  const usual = usualDistortion(part, relieved)
  const process = part.hardening ? routeProcessOf(part.hardening) : 'turn'
  const ovality = measuredFor(part, shop, process, 'ovality')
  const bow = measuredFor(part, shop, process, 'bow')
  const per100 = 100 / part.length.nominal
  const used = {
    ...usual,
    ovality: ovality?.ovality ?? usual.ovality,
    bow: bow?.bow === undefined ? usual.bow : bow.bow * per100,
  }
  return { usual, used, ...(ovality && { ovality }), ...(bow && { bow }) }
}

function usualDistortion({ hardening, kind }: Part, relieved: boolean): Distortion {
  if (!hardening) return DISTORTION.turned
  if (routeProcessOf(hardening) === 'nitride')
    return relieved ? DISTORTION.stressRelieved : DISTORTION.notStressRelieved
  return kind === 'pin' ? DISTORTION.quenchedPin : DISTORTION.quenchedSleeve
}

function distortionBefore(
  notebook: Notebook,
  part: Part,
  shop: Shop,
  operations: readonly Operation[],
  about: About,
): Distortion {
  const { usual, used, ovality, bow } = distortionOf(part, shop, operations)
  const note = (symbol: string, meaning: string, value: number, row: Measured | undefined) =>
    notebook.note({
      ...about,
      symbol,
      meaning: row ? meaning : `${meaning}, ${usual.condition}`,
      value,
      unit: 'mm',
      expression: '',
      source: row ? measuredSource(row) : usual.source,
    })
  note('o', 'ovality, largest less smallest diameter', used.ovality, ovality)
  note('b', 'bow of the axis over the length', (used.bow * part.length.nominal) / 100, bow)
  return used
}
