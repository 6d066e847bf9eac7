import type { Characteristic } from '../inspection/characteristic.ts'
import type { Plan } from '../plan/plan.ts'
import type { SheetToPrint } from './lay-out-document.ts'
import { characteristicsView } from './views/characteristics-view.ts'
import { MATRIX_COLUMNS, matrixView } from './views/matrix-view.ts'
import type { PaperFigures } from './views/paper-figures.ts'
import { isColumn } from './work-groups.ts'

/** Before and after hardening on one sheet, so that growth reads across; all that comes later on the next; then the list. */
export function inspectionSheets(plan: Plan, figures: PaperFigures): readonly SheetToPrint[] {
  const { characteristics } = plan.inspection
  const untilThen = backFromHardening(plan)
  const columns = characteristics.filter(isColumn).toSorted(byFeature)
  // A sheet that has room for all of them is one.
  const isOne = columns.length <= MATRIX_COLUMNS
  const early = isOne ? [] : columns.filter(({ operation }) => operation <= lastOfFirst(columns, untilThen))
  const coupon = characteristics.filter(
    ({ plan: sample, operation }) => sample.includes('coupon') && operation <= untilThen,
  )
  const atLast = plan.operations.find(({ purpose }) => purpose === 'final-inspection')?.number
  // What is looked at before that stands where the pieces are counted.
  const isLine = (one: Characteristic): boolean => one.operation === atLast && one.readAt === undefined
  const shown = characteristics.filter(one => one.stage !== 'in-process' && (isColumn(one) || isLine(one)))
  const matrix = (heading: string, name: string, all: readonly Characteristic[], ofCoupon: typeof coupon) =>
    inEvenParts(all).map((part, index) => ({
      template: 'matrix',
      documentType: 'Inspection matrix',
      corner: 'Check',
      heading,
      names: [name],
      joins: 'fewer pages' as const,
      view: matrixView(plan, { columns: part, coupon: index === 0 ? ofCoupon : [] }, figures),
    }))
  return [
    ...matrix('Before and after hardening', 'hardened', early, coupon),
    ...matrix(
      isOne && untilThen > 0 ? 'Before and after hardening, and finished' : 'Finished',
      'finished',
      isOne ? columns : columns.filter(one => !early.includes(one)),
      isOne ? coupon : [],
    ),
    {
      template: 'characteristics',
      documentType: 'List of characteristics',
      corner: 'List',
      heading: 'What is measured, with what, on how many',
      names: ['characteristics'],
      joins: 'fewer pages',
      view: characteristicsView(plan, shown, figures),
    },
  ]
}

/** The operation at which the pieces are read as the hardener returned them; nought where nothing is hardened. */
function backFromHardening({ operations, inspection }: Plan): number {
  const hardened = operations.find(({ place, process }) => place === 'outside' && /nitride|harden/.test(process))
  if (!hardened) return 0
  const back = inspection.characteristics.filter(one => one.operation > hardened.number && one.stage === 'on-return')
  return Math.min(...back.map(({ operation }) => operation), operations.at(-1)?.number ?? 0)
}

/** The last operation on the first sheet: until the pieces are back, and what follows where it finds room there whole. */
function lastOfFirst(columns: readonly Characteristic[], untilThen: number): number {
  if (untilThen === 0) return 0
  const later = [...new Set(columns.map(({ operation }) => operation))].filter(number => number > untilThen)
  const upTo = (last: number): number => columns.filter(({ operation }) => operation <= last).length
  return Math.max(untilThen, ...later.filter(number => upTo(number) <= MATRIX_COLUMNS))
}

/** The same surface side by side, as it goes through the works. */
const byFeature = (a: Characteristic, b: Characteristic): number =>
  rank(a).localeCompare(rank(b)) || a.operation - b.operation
const rank = ({ feature, unit }: Characteristic): string => `${unit === 'mm' ? 0 : 1} ${feature}`

function inEvenParts<T>(all: readonly T[]): readonly (readonly T[])[] {
  const parts = Math.ceil(all.length / MATRIX_COLUMNS)
  const each = Math.ceil(all.length / Math.max(1, parts))
  return Array.from({ length: parts }, (_, index) => all.slice(index * each, (index + 1) * each))
}
