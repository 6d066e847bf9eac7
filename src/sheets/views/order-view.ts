import { fixed, hardness } from '../../figures.ts'
import type { Plan, PlannedOperation } from '../../plan/plan.ts'
import type { Process } from '../../process.ts'
import type { PaperFigures } from './paper-figures.ts'
import { layerHeld, leftHead, platingTreatment, under } from './plating-rows.ts'
import { codeOf } from './route-card-view.ts'
import { type SizeRow, sizeRows } from './size-rows.ts'
import { caseOrder } from './stock-view.ts'

/** One page that stands alone: what comes, what to do, what to send back. */
export type OrderView = {
  readonly unit: string
  readonly owner: string
  readonly firms: readonly { readonly name: string; readonly days: string }[]
  readonly pieces: string
  readonly grade: string
  readonly drawing: string
  /** Sizes as the pieces will be when they come. */
  readonly arrives: readonly { readonly surface: string; readonly limits: string; readonly after: string }[]
  readonly condition: readonly { readonly what: string; readonly value: string }[]
  readonly datums: string
  readonly task: string
  readonly holding: string
  /** What the hardener is asked for. */
  readonly treatment: readonly { readonly what: string; readonly value: string }[]
  readonly sizes: readonly SizeRow[]
  readonly takes: readonly {
    readonly surface: string
    readonly least: string
    readonly most: string
    readonly needed: string
    /** Of the case or the plating that must be left, what is to spare. */
    readonly left: string
  }[]
  readonly leftHead: string
  readonly papers: readonly string[]
  readonly packing: readonly string[]
  readonly cautions: readonly string[]
  readonly code: string
}

/** Common practice, no source. */
const PAPERS: { readonly [process in Process]?: readonly string[] } = {
  nitride: [
    'furnace chart of the load, with load number',
    'depth and hardness traverse on the coupon',
    'surface hardness of the pieces checked, with test load',
  ],
  'case-harden': [
    'furnace chart of the load, with load number',
    'depth and hardness traverse on the coupon',
    'surface hardness after tempering',
  ],
  'induction-harden': ['depth and hardness traverse on the first piece', 'surface hardness of the pieces checked'],
  'stress-relieve': ['furnace chart of the load, with load number'],
  grind: ['measured sizes of every piece', 'statement that pieces were ground without burn, and how that was checked'],
  hone: ['measured sizes and roughness of every piece'],
  plate: ['thickness of plating, piece by piece', 'chart of the bake after plating where the plan asks for one'],
}
/** Common practice, no source. */
const PACKING: readonly string[] = [
  'Keep each piece apart from the next; stand on end, oiled, never loose in a box.',
  'Do not part pieces from their numbers. Report a damaged piece before working it.',
]

/** Lines of the case that the hardener does not work by. */
const OURS: ReadonlySet<string> = new Set([
  'Outside grows',
  'Bore closes',
  'Depth left at the worst place',
  'Depth asked for after finishing',
  'Time at temperature, estimate',
])

export function orderView(plan: Plan, operation: PlannedOperation, figures: PaperFigures): OrderView {
  const { number, process } = operation
  const { length, unit } = figures
  const hardening = ['nitride', 'case-harden', 'induction-harden'].includes(process)
  return {
    unit,
    owner: plan.shop.name,
    firms: operation.firms.map(({ name, leadTime }) => ({ name, days: String(leadTime) })),
    pieces: String(plan.batch.start),
    grade: plan.material.grade,
    drawing: `operation-${number}`,
    arrives: arriving(plan, number, figures),
    condition: [
      ...(!hardening && hardened(plan, number) ? caseHeld(plan, figures) : []),
      ...(plan.plating && operation.purpose === 'hone-bore' ? layerHeld(plan.plating, figures) : []),
    ],
    datums: operation.locatedBy.join(', '),
    task: operation.name,
    holding: operation.holding,
    treatment: hardening
      ? caseOrder(plan, figures).filter(({ what }) => !OURS.has(what))
      : operation.purpose === 'stress-relieve'
        ? stressRelief(plan)
        : platingTreatment(plan, operation, figures),
    sizes: sizeRows(plan, operation, figures),
    takes: plan.stock
      .filter(entry => entry.operation === number)
      .map(({ surface, perSide, margin }) => ({
        surface,
        least: length(perSide.least),
        most: length(perSide.most),
        needed: length(perSide.needed),
        left: under(margin, length),
      })),
    leftHead: leftHead(plan.stock.filter(entry => entry.operation === number)),
    papers: PAPERS[process] ?? ['measured sizes of every piece'],
    packing: PACKING,
    cautions: operation.cautions,
    code: codeOf([plan.part.number, plan.part.revision, plan.batch.number, String(number)]),
  }
}

/** Common practice for the slow heating and cooling, no source. */
function stressRelief({ case: planned }: Plan): OrderView['treatment'] {
  const { stressRelief: chosen, stressReliefWindow: window, temper } = planned?.order ?? {}
  if (chosen === undefined || window === undefined) return []
  const celsius = (value: number) => `${fixed(value, 0)} °C`
  return [
    { what: 'Stress relieve at', value: celsius(chosen) },
    { what: 'Not under', value: `${celsius(window.least)}, or nitriding moves the part` },
    {
      what: 'Not over',
      value: `${celsius(window.most)}, or the bar softens${temper === undefined ? '' : `: tempered at ${celsius(temper)}`}`,
    },
    {
      what: 'Heat and cool',
      value: 'slowly, parts free to move; time and rate are for the hardener to choose and to confirm',
    },
  ]
}

/** The state in which every surface stands when it goes out. */
function arriving({ ladders }: Plan, number: number, figures: PaperFigures): OrderView['arrives'] {
  return ladders.flatMap(({ surface, kind, states }) => {
    const state = states.findLast(({ operation }) => operation < number)
    if (!state) return []
    const limits = figures.limits(state, kind === 'bore' ? 'hole' : 'shaft', state.places)
    return [{ surface: kind === 'face' ? surface : `${surface} Ø`, limits, after: `${state.operation} ${state.name}` }]
  })
}

/** What the finisher must know of the case. */
function caseHeld({ case: held }: Plan, { length, unit }: PaperFigures): OrderView['condition'] {
  if (!held) return []
  return [
    {
      what: 'Case',
      value: `${held.process}, ${length(held.ordered.least, 2)} to ${length(held.ordered.most, 2)} ${unit}`,
    },
    { what: 'To be left', value: `not under ${length(held.asked, 2)} ${unit}` },
    { what: 'Hardness', value: `${hardness(held.surfaceHardness)} HV, core ${hardness(held.coreHardness)} HV` },
  ]
}

const hardened = ({ operations }: Plan, number: number): boolean =>
  operations.some(
    operation =>
      operation.number < number && ['nitride', 'case-harden', 'induction-harden'].includes(operation.process),
  )
