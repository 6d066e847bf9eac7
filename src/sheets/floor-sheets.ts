import type { Plan } from '../plan/plan.ts'
import type { SheetToPrint } from './lay-out-document.ts'
import { benchView } from './views/bench-view.ts'
import { materialView } from './views/material-view.ts'
import { operationView } from './views/operation-view.ts'
import type { PaperFigures } from './views/paper-figures.ts'
import { portsCuttingView } from './views/ports-cutting-view.ts'
import { portsView } from './views/ports-view.ts'
import { routeCardView } from './views/route-card-view.ts'
import { type WorkGroup, workGroups } from './work-groups.ts'

/** What goes round with the pieces, in the order in which it is used. */
export function floorSheets(plan: Plan, pictures: readonly string[], figures: PaperFigures): readonly SheetToPrint[] {
  return [
    {
      template: 'route-card',
      documentType: 'Route card',
      corner: plan.part.number,
      heading: `Route of batch ${plan.batch.number}`,
      view: routeCardView(plan, figures),
      names: ['route'],
    },
    ...workGroups(plan).flatMap(group => groupSheets(plan, group, pictures, figures)),
  ]
}

function groupSheets(
  plan: Plan,
  { kind, operations, slips }: WorkGroup,
  pictures: readonly string[],
  figures: PaperFigures,
): readonly SheetToPrint[] {
  const numbers = operations.map(({ number }) => String(number))
  const names = [...numbers, ...slips.map(({ number }) => String(number))]
  const [first] = operations
  if (!first) return []
  const { name } = first
  switch (kind) {
    case 'material':
      return [
        {
          template: 'material',
          documentType: 'Material and kit',
          corner: numbers.join(' '),
          heading: 'Material and kit',
          view: materialView(plan, figures, slips),
          names: ['material', ...names],
          joins: 'fewer pages',
        },
      ]
    case 'bench':
      return [
        {
          template: 'bench',
          documentType: 'Bench card',
          corner: numbers.join(' '),
          heading: 'Bench',
          view: benchView(plan, operations, slips, figures),
          names: ['bench', ...names],
          joins: 'fewer pages',
        },
      ]
    case 'ports': {
      const view = {
        ...portsView(plan, figures, pictures),
        ...operationView(plan, first, slips, figures),
        ...portsCuttingView(plan, first, figures),
      }
      const page = (template: string, heading: string) => ({
        template,
        documentType: 'Port sheet',
        corner: numbers.join(' '),
        heading: `${name}: ${heading}`,
        view,
        names: ['ports', template, ...names],
        ...(template !== 'ports-left' && { joins: 'fewer pages' as const }),
      })
      return [
        page('ports-left', 'set, prove, pick up'),
        page('ports-right', 'where the windows are'),
        page('ports-cutting', 'cut and measure'),
      ]
    }
    case 'machine':
      return [
        {
          template: 'operation',
          documentType: 'Operation sheet',
          corner: numbers.join(' '),
          heading: name,
          view: operationView(plan, first, slips, figures),
          names,
          joins: 'one page',
        },
      ]
  }
}
