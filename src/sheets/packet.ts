import type { Units } from '../figures.ts'
import type { Characteristic } from '../inspection/characteristic.ts'
import { drawPictures, drawSmaller } from '../pictures/draw-pictures.ts'
import type { Plan } from '../plan/plan.ts'
import type { SheetToPrint } from './lay-out-document.ts'
import { orderSheets } from './order-sheets.ts'
import { type Printed, type PrintOptions, printDocument } from './print-document.ts'
import type { Paper } from './theme.ts'
import { titleBlock } from './title-block.ts'
import { inspectionView } from './views/inspection-view.ts'
import { materialView } from './views/material-view.ts'
import { operationView } from './views/operation-view.ts'
import { type PaperFigures, paperFigures } from './views/paper-figures.ts'
import { portsView } from './views/ports-view.ts'
import { routeCardView } from './views/route-card-view.ts'
import { stockView } from './views/stock-view.ts'
import { workingsView } from './views/workings-view.ts'

export type PacketOptions = PrintOptions & {
  readonly paper: Paper
  readonly units: Units
}

/** All the paper of a batch, in the order in which it is used, drawings and all. */
export function packet(plan: Plan, options: PacketOptions): Promise<Printed> {
  const { paper, units, typeface } = options
  const pictures = drawPictures(plan, typeface.measure, units)
  const sheets = packetSheets(plan, [...pictures.keys()], paperFigures(units))
  const smaller = drawSmaller(plan, typeface.measure, units)
  return printDocument({ block: titleBlock(plan), sheets, pictures, paper, smaller }, options)
}

/** The sheets of a packet, each with its template and the view that fills it. */
export function packetSheets(plan: Plan, pictures: readonly string[], figures: PaperFigures): readonly SheetToPrint[] {
  const card = routeCardView(plan, figures)
  return [
    {
      template: 'route-card',
      documentType: 'Route card',
      corner: plan.part.number,
      heading: `Route of batch ${plan.batch.number}`,
      view: card,
    },
    {
      template: 'calendar',
      documentType: 'Calendar',
      corner: plan.part.number,
      heading: 'Calendar and open questions',
      view: card,
    },
    {
      template: 'material',
      documentType: 'Material sheet',
      corner: 'Bar',
      heading: 'Bar to pull and cut',
      view: materialView(plan, figures),
    },
    ...plan.operations.map(operation => ({
      template: 'operation',
      documentType: 'Operation sheet',
      corner: String(operation.number),
      heading: operation.name,
      view: operationView(plan, operation, figures),
    })),
    ...portSheets(plan, pictures, figures),
    ...stockSheets(plan, pictures, figures),
    ...STAGES.flatMap(stage => inspectionSheets(plan, stage, figures)),
    ...plan.orders.flatMap(order => orderSheets(plan, order, figures)),
    ...(plan.workings.length === 0
      ? []
      : [
          {
            template: 'workings',
            documentType: 'Workings',
            corner: 'Why',
            heading: 'Workings',
            view: workingsView(plan),
          },
        ]),
  ]
}

function portSheets(plan: Plan, pictures: readonly string[], figures: PaperFigures): readonly SheetToPrint[] {
  if (plan.ports.length === 0) return []
  const milling = plan.operations.find(({ purpose }) => purpose === 'mill-ports')
  const heading = milling ? `Port setting for operation ${milling.number}` : 'Port setting'
  const view = portsView(plan, figures, pictures)
  return [{ template: 'ports', documentType: 'Port setting sheet', corner: 'Ports', heading, view }]
}

function stockSheets(plan: Plan, pictures: readonly string[], figures: PaperFigures): readonly SheetToPrint[] {
  if (plan.stock.length === 0 && plan.ladders.length === 0) return []
  const view = stockView(plan, figures, pictures)
  return [
    { template: 'stock', documentType: 'Stock sheet', corner: 'Stock', heading: 'Stock left for finishing', view },
  ]
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
    },
  ]
}
