import { mass } from '../../figures.ts'
import type { Plan, PlannedOperation } from '../../plan/plan.ts'
import { pieceNames } from '../piece-names.ts'
import type { PaperFigures } from './paper-figures.ts'
import { codeOf } from './route-card-view.ts'
import { type SizeRow, sizeRows } from './size-rows.ts'
import { type SlipRow, slipRows } from './slip-rows.ts'
import { type StepRow, stepRows } from './step-rows.ts'

export type MaterialView = {
  readonly unit: string
  readonly grade: string
  readonly supply: string
  readonly barDiameter: string
  readonly barLength: string
  readonly bars: string
  readonly mass: string
  readonly blankMass: string
  /** What is sawn, and the bar as it is delivered. */
  readonly sawn: readonly SizeRow[]
  readonly pitch: string
  readonly offcut: string
  readonly start: string
  readonly heat: string
  readonly because: readonly string[]
  /** One row a bar, numbered. */
  readonly cuts: readonly { readonly bar: string; readonly upTo: string }[]
  /** Pieces by name, three beside each other: `S` for set-up, `C` for the coupon, then by number. */
  readonly pieces: readonly { readonly names: readonly string[] }[]
  readonly saw: SawView | undefined
  readonly kit: readonly KitRow[]
}

/** The operation that cuts the blanks. */
type SawView = {
  readonly holding: string
  readonly steps: readonly StepRow[]
  readonly cautions: readonly string[]
  readonly slips: readonly SlipRow[]
  readonly code: string
}

type KitRow = { readonly what: string; readonly items: string }

const ACROSS = 4

export function materialView(plan: Plan, figures: PaperFigures, slips: readonly PlannedOperation[] = []): MaterialView {
  const { material, batch } = plan
  const { length, unit } = figures
  const saw = plan.operations.find(({ purpose }) => purpose === 'saw-blanks')
  const pieces = pieceNames(plan)
  return {
    unit,
    grade: material.grade,
    supply: material.barSupply,
    barDiameter: length(material.barDiameter, 1),
    barLength: length(material.barLength, 0),
    bars: String(material.bars),
    mass: mass(material.mass),
    blankMass: mass(material.blankMass),
    sawn: saw ? sizeRows(saw, figures) : [],
    pitch: length(material.pitch, 1),
    offcut: length(material.offcut, 0),
    start: String(batch.start),
    heat: batch.heat ?? '',
    because: material.because ?? [],
    cuts: Array.from({ length: material.bars }, (_, index) => ({
      bar: String(index + 1),
      upTo: String(material.piecesPerBar),
    })),
    pieces: Array.from({ length: Math.ceil(pieces.length / ACROSS) }, (_, row) => {
      const names = pieces.slice(row * ACROSS, (row + 1) * ACROSS)
      return { names: [...names, ...Array.from({ length: ACROSS - names.length }, () => '')] }
    }),
    saw: saw && {
      holding: saw.holding,
      steps: stepRows(saw.steps, figures),
      cautions: saw.cautions,
      slips: slipRows(plan, [saw, ...slips], figures),
      code: codeOf([plan.part.number, plan.part.revision, batch.number, String(saw.number)]),
    },
    kit: kitRows(plan),
  }
}

type KitItem = Plan['kit'][number]

/** What is fetched before the batch begins, with the operations that ask for it; what the works has none of is bought or borrowed in time. */
function kitRows({ kit }: Plan): readonly KitRow[] {
  const isGauge = ({ kind }: KitItem): boolean => kind.endsWith(' gauge')
  return [
    { what: 'Tools', items: listed(kit.filter(one => one.have && !isGauge(one))) },
    { what: 'Gauges', items: listed(kit.filter(one => one.have && isGauge(one))) },
    { what: 'To get', items: listed(kit.filter(one => !one.have)) },
  ].filter(({ items }) => items !== '')
}

/** Each once, as many as the operation asks most of. */
function listed(items: readonly KitItem[]): string {
  const names = [...new Set(items.map(({ what }) => what))]
  return names
    .map(name => {
      const uses = items.filter(({ what }) => what === name)
      const most = Math.max(...uses.map(({ quantity }) => quantity))
      const numbers = [...new Set(uses.map(({ operation }) => operation))].join(', ')
      return `${most > 1 ? `${most}\u00a0×\u00a0` : ''}${name.replace(/, to get$/, '')} (${numbers})`
    })
    .join('; ')
}
