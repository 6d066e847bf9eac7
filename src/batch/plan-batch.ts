import type { Finding } from '../finding.ts'
import { densityOf, densitySource } from '../handbook/density.ts'
import { materialOf } from '../handbook/materials.ts'
import { fromHandbook, told, worked } from '../known.ts'
import { between } from '../limits.ts'
import type { OperationSize } from '../operation-size.ts'
import type { Part } from '../part/part.ts'
import type { Operation } from '../route/operation.ts'
import type { Shape } from '../shape.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import { openNotebook, type Working } from '../working.ts'
import type { Batch, BatchRequest, MaterialNeed } from './batch.ts'
import { batchFindings } from './batch-findings.ts'
import { type BarChoice, chooseBar } from './choose-bar.ts'
import { type CutList, cutList, SAWN_LENGTH_TOLERANCE } from './cut-list.ts'
import { extraPieces } from './extra-pieces.ts'
import { goOnWith, startQuantity } from './start-quantity.ts'

/** What rough turning must leave, at the most. */
export type BlankNeed = {
  readonly diameter: Millimetre
  readonly length: Millimetre
}

export type BatchPlan = {
  readonly batch: Batch
  readonly material: MaterialNeed
  /** The blank as it leaves the saw. */
  readonly sawn: {
    readonly shape: Shape
    readonly sizes: readonly OperationSize[]
  }
  readonly findings: readonly Finding[]
  readonly workings: readonly Working[]
}

/** How many pieces to start for the good ones wanted, from which bar, and how to cut it. */
export function planBatch({
  part,
  shop,
  request,
  operations,
  need,
}: {
  readonly part: Part
  readonly shop: Shop
  readonly request: BatchRequest
  readonly operations: readonly Operation[]
  readonly need: BlankNeed
}): BatchPlan {
  const notebook = openNotebook()
  const { habits } = shop
  const { grade } = part.material
  const started = startQuantity(request.quantity, operations, shop, notebook)
  const extras = extraPieces(operations, habits)
  const pieces = started.ok ? started.pieces : request.quantity
  const batch: Batch = {
    ...request,
    start: extras.reduce((sum, extra) => sum + extra.pieces, pieces),
    confidence: started.ok ? started.confidence : 0,
    yield: started.yield,
    extras,
    numbered: pieces,
    ...(started.ok && { goOnWith: goOnWith(request.quantity, operations, shop) }),
  }

  const overhang = need.length + 2 * habits.facingAllowance + SAWN_LENGTH_TOLERANCE
  const group = materialOf(grade)?.group
  const bar: BarChoice = group
    ? chooseBar({ group, diameter: need.diameter, length: overhang }, notebook)
    : { ok: false, reason: `grade ${grade} is not in the list of materials` }
  const size = bar.ok ? bar : { lower: need.diameter, upper: need.diameter }
  const diameter = bar.ok ? bar.bar.diameter : need.diameter
  const cut = cutList({
    length: need.length,
    start: batch.start,
    bar: {
      ...told(bar.ok ? fromHandbook(bar.form.source) : worked('as rough turned, no bar is listed'), { d: diameter }),
      ...told(fromHandbook(`density of ${grade}: ${densitySource(grade)}`), { rho: group ? densityOf(grade) : 0 }),
    },
    shop,
    notebook,
  })

  return {
    batch,
    material: {
      grade,
      barDiameter: diameter,
      barSupply: bar.ok ? supply(part, bar.form.name) : 'no listed bar',
      blankLength: cut.blankLength,
      pitch: cut.pitch,
      piecesPerBar: cut.piecesPerBar,
      bars: cut.bars,
      barLength: cut.barLength,
      mass: cut.mass,
      blankMass: cut.blankMass,
      offcut: cut.offcut,
      because: bar.ok ? bar.because : [],
    },
    sawn: {
      shape: sawnShape(part, diameter, cut.blankLength),
      sizes: sawnSizes(cut, { nominal: diameter, lower: size.lower, upper: size.upper }),
    },
    findings: batchFindings(part, operations, batch, { started, bar, cut }),
    get workings() {
      return notebook.workings
    },
  }
}

/** What to write on the order for the bar. */
function supply({ material: { grade, hardness, temper } }: Part, form: string): string {
  const core = hardness === undefined ? undefined : `${conditionOf(grade)}${hardness} HV`
  const certificate = temper === undefined ? undefined : `tempered at ${temper} °C, on the certificate`
  return [form, core, certificate].filter(text => text !== undefined).join('; ')
}

/** Steel that is case hardened comes soft: its core is quenched with the case. */
function conditionOf(grade: string): string {
  const group = materialOf(grade)?.group
  if (group === 'case-hardening steel') return 'annealed, '
  return group === 'heat-treatable steel' || group === 'nitriding steel' || group === 'bearing steel'
    ? 'quenched and tempered to '
    : ''
}

/** A solid blank; what it has over the finished length is spread evenly on both ends. */
function sawnShape(part: Part, diameter: Millimetre, length: Millimetre): Shape {
  const end = (length - part.length.nominal) / 2
  const top = -end
  const bottom = part.length.nominal + end
  return { top, bottom, outside: [{ name: 'bar', from: top, to: bottom, diameter }], bore: [], ported: false }
}

const sawnSizes = (cut: CutList, bar: Omit<OperationSize, 'feature' | 'measure'>): readonly OperationSize[] => [
  { feature: 'length', measure: 'length', ...between(cut.lower, cut.upper) },
  { feature: 'outside', measure: 'diameter', ...bar },
]
