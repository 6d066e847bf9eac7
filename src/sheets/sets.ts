import type { OutsideOrder } from '../orders/order.ts'
import type { Plan } from '../plan/plan.ts'
import type { Reader } from '../reader.ts'
import { floorSheets } from './floor-sheets.ts'
import { inspectionSheets } from './inspection-sheets.ts'
import type { SheetToPrint } from './lay-out-document.ts'
import { orderSheets } from './order-sheets.ts'
import type { Way } from './theme.ts'
import type { PaperFigures } from './views/paper-figures.ts'
import { portsView } from './views/ports-view.ts'
import { routeCardView } from './views/route-card-view.ts'
import { stockView } from './views/stock-view.ts'
import { workingsView } from './views/workings-view.ts'

/** The sheets of one reader: a document of its own, numbered in itself. */
export type PacketSet = {
  /** Or only who asks for it by its name. */
  readonly reader: Reader | 'asked'
  /** Of its file, without its ending: `floor`, `order-1-quillfen-hardening`. */
  readonly name: string
  /** As its sheets are counted: `Floor 3 of 10`. */
  readonly title: string
  readonly way: Way
  readonly sheets: readonly SheetToPrint[]
}

/** All sheets of a packet, by their readers, each with its template and the view that fills it. */
export function packetSets(plan: Plan, pictures: readonly string[], figures: PaperFigures): readonly PacketSet[] {
  const sets: readonly PacketSet[] = [
    {
      reader: 'floor',
      name: 'floor',
      title: 'Floor',
      way: 'upright',
      sheets: floorSheets(plan, pictures, figures),
    },
    {
      reader: 'inspection',
      name: 'inspection',
      title: 'Inspection',
      way: 'across',
      sheets: inspectionSheets(plan, figures),
    },
    ...plan.orders.map(order => orderSet(plan, order, figures)),
    {
      reader: 'asked',
      name: 'check-paper',
      title: 'Check paper',
      way: 'upright',
      sheets: plan.ports.length === 0 ? [] : [CHECK_PAPER],
    },
    {
      reader: 'file',
      name: 'file',
      title: 'File',
      way: 'upright',
      sheets: fileSheets(plan, pictures, figures),
    },
  ]
  return sets.filter(({ sheets }) => sheets.length > 0)
}

export const nameOfOrder = ({ number, firm }: OutsideOrder): string => `order-${number}-${firm.toLowerCase()}`

const orderSet = (plan: Plan, order: OutsideOrder, figures: PaperFigures): PacketSet => ({
  reader: 'orders',
  name: nameOfOrder(order),
  title: `Order ${order.number}, sheet`,
  way: 'upright',
  sheets: orderSheets(plan, order, figures).map(sheet => ({
    ...sheet,
    names: [`order-${order.number}`, ...order.operations.map(String)],
  })),
})

const CHECK_PAPER: SheetToPrint = {
  template: 'check-paper',
  documentType: 'Check paper',
  corner: '1:1',
  heading: 'Ports at true size, to cut out',
  view: {},
  names: ['check-paper'],
}

/** What nobody carries about: it is looked up. */
const fileSheets = (plan: Plan, pictures: readonly string[], figures: PaperFigures): readonly SheetToPrint[] => [
  {
    template: 'calendar',
    documentType: 'Calendar',
    corner: plan.part.number,
    heading: 'Calendar and open questions',
    view: routeCardView(plan, figures),
    names: ['calendar'],
  },
  ...stockSheets(plan, pictures, figures),
  ...portsFile(plan, pictures, figures),
  ...(plan.workings.length === 0
    ? []
    : [
        {
          template: 'workings',
          documentType: 'Workings',
          corner: 'Why',
          heading: 'Workings',
          view: workingsView(plan),
          names: ['workings'],
        },
      ]),
]

function portsFile(plan: Plan, pictures: readonly string[], figures: PaperFigures): readonly SheetToPrint[] {
  if (plan.ports.length === 0) return []
  const view = portsView(plan, figures, pictures)
  const heading = 'Ports: edges, timing, areas'
  return [{ template: 'ports-file', documentType: 'Ports', corner: 'Ports', heading, view, names: ['ports-file'] }]
}

function stockSheets(plan: Plan, pictures: readonly string[], figures: PaperFigures): readonly SheetToPrint[] {
  if (plan.stock.length === 0 && plan.ladders.length === 0) return []
  const view = stockView(plan, figures, pictures)
  const heading = 'Stock left for finishing'
  return [{ template: 'stock', documentType: 'Stock sheet', corner: 'Stock', heading, view, names: ['stock'] }]
}
