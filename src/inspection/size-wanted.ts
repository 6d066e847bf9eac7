import { fixed } from '../figures.ts'
import type { Given } from '../formula.ts'
import { materialOf } from '../handbook/materials.ts'
import { EXPANSION, warmReading } from '../handbook/thermal-expansion.ts'
import type { OperationSize } from '../operation-size.ts'
import type { Part } from '../part/part.ts'
import { placeKind, writtenAs } from '../place.ts'
import { drilledBore } from '../route/drilled-bore.ts'
import type { Operation } from '../route/operation.ts'
import type { GaugeKind } from '../shop/shop.ts'
import { type Millimetre, millimetres } from '../units.ts'
import { featureSizeWanted } from './feature-wanted.ts'
import type { Made } from './sizes-made.ts'
import type { Wanted, Where } from './wanted.ts'

const KIND: { readonly [measure in OperationSize['measure']]: GaugeKind } = {
  diameter: 'outside',
  length: 'length',
  depth: 'depth',
  height: 'depth',
  width: 'contour',
}

/** A part is soaked to the room's temperature; this much is easily missed after grinding. */
const WARMER = 5
const CLOSE = new Set(['grind', 'hone', 'lap', 'plate'])

/** A size as it must measure at an operation or a check; `by` made it. */
export function sizeWanted(part: Part, operations: readonly Operation[], { size, by }: Made, where: Where): Wanted {
  if (size.of) return featureSizeWanted({ ...size, of: size.of }, where)
  const { feature, measure, edge, item, across, nominal, lower, upper } = size
  const place = placeKind(part, feature)
  const inBore = place === 'bore'
  const isPort = place === 'port'
  const isDiameter = measure === 'diameter'
  const plain = isDiameter ? 'diameter' : feature === measure ? '' : measure
  const what = edge ? `${edge} edge` : (item ?? (across ? `${plain} square to ${across}` : plain))
  const close = where.stage === 'final' || CLOSE.has(by.process)
  const warm = isDiameter && close ? warmRemark(part, size) : []
  const remarks = [
    ...(isDiameter && inBore ? boreRemarks(part, operations, where.operation) : []),
    ...(isPort ? portRemarks(size) : []),
    ...warm,
  ]
  return {
    ...where,
    name: `${[feature, what].filter(Boolean).join(' ')}${isPort && where.stage === 'final' ? ', finished' : ''}`,
    // A bar between windows is metal: it is gauged from outside.
    kind: isDiameter && inBore ? 'bore' : item ? 'outside' : KIND[measure],
    unit: 'mm',
    nominal,
    lower,
    upper,
    feature,
    written: item ? 'shaft' : writtenAs(place, measure),
    weight: (inBore && close) || (isPort && edge === 'top') ? 'critical' : 'major',
    ...(remarks.length > 0 && { remark: remarks.join('; ') }),
    ...(warm.length > 0 && { warm: nominal }),
  }
}

/** How a gauge gets at a port. */
function portRemarks({ measure, item, across, nominal }: OperationSize): readonly string[] {
  if (item) return ['between the windows, square to the stream']
  if (measure === 'height') return ['bottom edge less top edge, in the bore, at one place round it']
  if (measure !== 'width') return []
  const gauged =
    nominal <= LARGEST_PIN
      ? 'a pin of the lower limit goes through along the stream, one of the upper does not'
      : 'seen along the stream'
  return [...(across ? ['less than the chord that is drawn'] : []), gauged]
}

/** A wider window is read along the stream through a microscope. Common practice, no source. */
const LARGEST_PIN: Millimetre = 20

function boreRemarks(part: Part, operations: readonly Operation[], at: number): readonly string[] {
  if (drilledBore(part)) return []
  const ported = operations.some(({ number, purpose }) => purpose === 'mill-ports' && number < at)
  const turnedLast = !operations.some(
    ({ surfaces, process }) => CLOSE.has(process) && surfaces.some(name => placeKind(part, name) === 'bore'),
  )
  return [
    ported ? 'three heights, two directions, contacts and jets clear of the ports' : 'three heights, two directions',
    ...(turnedLast ? ['with three contacts: two do not see the lobes that jaws leave'] : []),
  ]
}

/** Inputs of the formula for a part that is still warm; nothing for a material without an expansion. */
export function warmGiven(part: Part, D: Millimetre): Given<{ alpha: '1e-6/K'; D: 'mm'; dT: 'K' }> | undefined {
  const group = materialOf(part.material.grade)?.group
  return group && { alpha: EXPANSION[group], D, dT: WARMER }
}

/** Said only where the error would take an eighth of the tolerance or more, as much as the strict rule lets a gauge have. */
function warmRemark(part: Part, { nominal, lower, upper }: OperationSize): readonly string[] {
  const given = warmGiven(part, nominal)
  const error = given ? warmReading.value(given) : 0
  return millimetres(error) < (upper - lower) / 8
    ? []
    : [`at 20 °C: ${WARMER} K warm reads ${fixed(error, 1)} µm large`]
}
