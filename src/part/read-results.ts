import { byPlace, type Finding, hasErrors, type Place } from '../finding.ts'
import { isDate } from './date.ts'
import { openDocument, present } from './open-document.ts'
import type { GaugeUsed, HardnessResult, LostPiece, Reading, Results } from './results.ts'
import { validateResults } from './validators.ts'
import type { View } from './view.ts'
import { openYaml } from './yaml-source.ts'

const TEMPERATURE = { from: -20, upTo: 80 }
/** A key of a piece that is not something measured. */
const OWN: ReadonlySet<string> = new Set(['serial', 'note'])

/** Reads a results file in YAML. `file` is what findings call it. */
export function readResults(
  text: string,
  file: string,
): { readonly results?: Results; readonly findings: readonly Finding[] } {
  const { source, findings } = openYaml(text, file)
  if (!source) return { findings }
  const { root, findings: found } = openDocument(source, validateResults)
  const placeOf = (view: View, key?: string): Place =>
    source.places.get(key === undefined ? view.path : view.pathOf(key)) ?? { file, line: 1, column: 1 }
  const head = root.into('results')
  const date = head?.text('date')
  if (date !== undefined && !isDate(date))
    head?.report({ code: 'input/unreadable', message: `date "${date}" is no day`, hint: 'write YYYY-MM-DD' }, 'date')
  const directions = root.quantities('directions', 'angle', { from: -360, upTo: 360 })
  const all = present({
    after: root.into('after')?.count('operation'),
    temperature: head?.quantity('temperature', 'temperature', TEMPERATURE),
    gaugeTemperature: head?.quantity('gauge-temperature', 'temperature', TEMPERATURE),
    date,
    by: head?.text('by'),
  })
  const gauges = gaugesOf(root.into('gauges'))
  const readings = root.each('pieces').flatMap((piece): readonly Reading[] => {
    const serial = piece.label('serial')
    if (serial === undefined) return []
    const note = piece.text('note')
    const common = { ...all, serial, ...(note !== undefined && { note }) }
    return piece.keys
      .filter(key => !OWN.has(key))
      .flatMap(key => {
        const gauge = gauges.get(key)
        const of = { ...common, of: key, ...(gauge && { gauge }) }
        return localReadings(piece, key, directions).map(({ view, at, ...local }) => ({
          ...of,
          ...local,
          places: placesOf(source.written.get(view.pathOf(at)), local.value),
          at: placeOf(view, at),
        }))
      })
  })
  const hardness = hardnessOf(root.into('hardness'), placeOf)
  const results: Results = {
    file,
    readings,
    lost: root.each('lost').flatMap(view => lostOf(view, placeOf)),
    at: placeOf(root, 'results'),
    ...present({ part: head?.label('part'), revision: head?.label('revision'), batch: head?.label('batch'), date }),
    ...(hardness && { hardness }),
  }
  const sorted = byPlace(found)
  return hasErrors(sorted) ? { findings: sorted } : { results, findings: sorted }
}

type Local = {
  readonly value: number
  readonly depth?: number
  readonly direction?: number
  readonly view: View
  readonly at: string
}

/** Every value of one key of a piece: a reading, a list by direction, or either by depth. */
function localReadings(piece: View, key: string, directions: readonly number[]): readonly Local[] {
  const raw = piece.raw(key)
  if (typeof raw !== 'object' || raw === null) return one(piece, key, {})
  if (Array.isArray(raw)) return listed(piece, key, directions, {})
  const levels = piece.into(key)
  if (!levels) return []
  return levels.keys.flatMap(level => {
    const depth = Number(level)
    if (!Number.isFinite(depth)) {
      const hint = 'write {20: …, 60: …}: depths below the top face, mm'
      levels.report({ code: 'input/unreadable', message: `"${level}" is no depth`, hint }, level)
      return []
    }
    return Array.isArray(levels.raw(level))
      ? listed(levels, level, directions, { depth })
      : one(levels, level, { depth })
  })
}

/** Nothing of a place that was left empty: not measured is not 0. */
function one(
  view: View,
  key: string,
  where: { readonly depth?: number; readonly direction?: number },
): readonly Local[] {
  const raw = view.raw(key)
  if (raw === null || raw === '') return []
  const value = view.quantity(key, 'length')
  return value === undefined ? [] : [{ value, ...where, view, at: key }]
}

function listed(
  view: View,
  key: string,
  directions: readonly number[],
  where: { readonly depth?: number },
): readonly Local[] {
  const raw = view.raw(key)
  if (!Array.isArray(raw)) return []
  if (directions.length > 0 && raw.length !== directions.length) {
    const message = `${key} has ${raw.length} readings, and directions names ${directions.length}`
    view.report({ code: 'input/choose-one', message, hint: 'write null where nothing was measured' }, key)
    return []
  }
  const list = view.list(key)
  return raw.flatMap((_, index) => {
    const direction = directions[index]
    return list ? one(list, String(index), { ...where, ...(direction !== undefined && { direction }) }) : []
  })
}

function gaugesOf(view: View | undefined): ReadonlyMap<string, GaugeUsed> {
  const named = (view?.keys ?? []).flatMap((key): readonly [string, GaugeUsed][] => {
    const gauge = view?.into(key)
    if (!gauge) return []
    const used = present({
      gauge: gauge.text('gauge'),
      id: gauge.label('id'),
      setOn: gauge.quantity('set-on', 'length', { over: 0, upTo: 1000 }),
      repeatability: gauge.quantity('repeatability', 'length', { over: 0, upTo: 1 }),
      uncertainty: gauge.quantity('uncertainty', 'length', { over: 0, upTo: 1 }),
    })
    return [[key, used]]
  })
  return new Map(named)
}

function hardnessOf(view: View | undefined, placeOf: (view: View) => Place): HardnessResult | undefined {
  if (!view) return undefined
  const said = present({
    coupon: view.label('coupon'),
    load: view.text('load'),
    depth: view.quantity('depth', 'length', { over: 0, upTo: 10 }),
  })
  return { ...said, surface: view.quantities('surface', 'hardness', { over: 0, upTo: 2000 }), at: placeOf(view) }
}

function lostOf(view: View, placeOf: (view: View) => Place): readonly LostPiece[] {
  const serial = view.label('serial')
  if (serial === undefined) return []
  return [{ serial, at: placeOf(view), ...present({ operation: view.count('operation'), why: view.text('why') }) }]
}

/** Decimal places of a number as it stands in the file. */
export const placesOf = (written: string | undefined, value: number): number => {
  const text = written ?? String(value)
  const point = text.indexOf('.')
  return point < 0 ? 0 : text.length - point - 1
}
