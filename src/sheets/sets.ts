import type { Characteristic } from '../inspection/characteristic.ts'
import type { OutsideOrder } from '../orders/order.ts'
import type { Plan } from '../plan/plan.ts'
import type { Reader } from '../reader.ts'
import type { SheetToPrint } from './lay-out-document.ts'
import { orderSheets } from './order-sheets.ts'
import type { Way } from './theme.ts'
import { inspectionView } from './views/inspection-view.ts'
import { materialView } from './views/material-view.ts'
import { operationView } from './views/operation-view.ts'
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
      way: 'upright',
      sheets: STAGES.flatMap(stage => inspectionSheets(plan, stage, figures)),
    },
    ...plan.orders.map(order => orderSet(plan, order, figures)),
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

const floorSheets = (plan: Plan, pictures: readonly string[], figures: PaperFigures): readonly SheetToPrint[] => [
  {
    template: 'route-card',
    documentType: 'Route card',
    corner: plan.part.number,
    heading: `Route of batch ${plan.batch.number}`,
    view: routeCardView(plan, figures),
    names: ['route'],
  },
  {
    template: 'material',
    documentType: 'Material sheet',
    corner: 'Bar',
    heading: 'Bar to pull and cut',
    view: materialView(plan, figures),
    names: ['material'],
  },
  ...plan.operations.map(operation => ({
    template: 'operation',
    documentType: 'Operation sheet',
    corner: String(operation.number),
    heading: operation.name,
    view: operationView(plan, operation, figures),
    names: [String(operation.number)],
  })),
  ...portSheets(plan, pictures, figures),
]

function portSheets(plan: Plan, pictures: readonly string[], figures: PaperFigures): readonly SheetToPrint[] {
  if (plan.ports.length === 0) return []
  const milling = plan.operations.find(({ purpose }) => purpose === 'mill-ports')
  const heading = milling ? `Port setting for operation ${milling.number}` : 'Port setting'
  const view = portsView(plan, figures, pictures)
  return [{ template: 'ports', documentType: 'Port setting sheet', corner: 'Ports', heading, view, names: ['ports'] }]
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

function stockSheets(plan: Plan, pictures: readonly string[], figures: PaperFigures): readonly SheetToPrint[] {
  if (plan.stock.length === 0 && plan.ladders.length === 0) return []
  const view = stockView(plan, figures, pictures)
  const heading = 'Stock left for finishing'
  return [{ template: 'stock', documentType: 'Stock sheet', corner: 'Stock', heading, view, names: ['stock'] }]
}

type Stage = Characteristic['stage']
const STAGES: readonly Stage[] = ['in-process', 'before-sending', 'on-return', 'final']
const STAGE_WORDS: { readonly [stage in Stage]: string } = {
  'in-process': 'in process',
  'before-sending': 'before sending',
  'on-return': 'on return',
  final: 'final',
}

function inspectionSheets(plan: Plan, stage: Stage, figures: PaperFigures): readonly SheetToPrint[] {
  const characteristics = plan.inspection.characteristics.filter(characteristic => characteristic.stage === stage)
  if (characteristics.length === 0) return []
  const words = STAGE_WORDS[stage]
  const view = inspectionView(plan, characteristics, figures)
  return [
    {
      template: 'inspection',
      documentType: `Inspection sheet, ${words}`,
      corner: 'Check',
      heading: `Inspection ${words}`,
      view,
      names: ['inspection'],
    },
  ]
}
