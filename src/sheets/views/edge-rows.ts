import { angle, chance } from '../../figures.ts'
import type { Plan } from '../../plan/plan.ts'
import type { EdgePlan } from '../../ports/edge-plan.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

/** A timing edge: what it may be, how it comes out, how far it is broken. */
export type EdgeRow = {
  readonly port: string
  readonly milledTo: string
  readonly least: string
  readonly most: string
  readonly worstCase: string
  readonly rootSumSquare: string
  readonly outside: string
  readonly broken: string
  readonly left: string
  readonly sooner: string
}

export const edgeRows = ({ ports }: Pick<Plan, 'ports'>, { length }: PaperFigures): readonly EdgeRow[] =>
  ports.flatMap(({ name, edge }) => {
    if (!edge) return []
    const { allowed, milledTo, worstCase, rootSumSquare, outside, edgeBreak } = edge
    const range = (
      of: { readonly least: number; readonly most: number } | undefined,
      write = (x: number) => length(x, 2),
    ) => (of ? `${write(of.least)} to ${write(of.most)}` : DASH)
    return [
      {
        port: name,
        milledTo: length(milledTo),
        least: length(allowed.lower),
        most: length(allowed.upper),
        worstCase: `±${length(worstCase)}`,
        rootSumSquare: `±${length(rootSumSquare)}`,
        outside: [...new Set([outside.bellShaped, outside.even].map(chance))].join('; '),
        broken: range(edgeBreak?.broken),
        left: range(edgeBreak?.left),
        sooner: range(edgeBreak?.sooner, angle),
      },
    ]
  })

/** What closes the chains, a line for each thing that is done or would have to be. */
export function cureLines({ ports }: Pick<Plan, 'ports'>, { length, unit }: PaperFigures): readonly string[] {
  const lines = ports.flatMap(({ name, edge }) => (edge ? [cureLine(name, edge, length, unit)] : []))
  return [...new Set(lines.filter(line => line !== ''))]
}

function cureLine(port: string, edge: EdgePlan, length: PaperFigures['length'], unit: string): string {
  const { cure, milledTo, takeOff, weighed } = edge
  if (cure === 'closer milling')
    return `${port}: milled closer than usual, within ${length(milledTo)} ${unit}, and the finished edge keeps its limits.`
  if (takeOff)
    return `Top face, operation ${takeOff.operation}: off each piece comes the measured depth of the ${takeOff.port} top edge less ${length(takeOff.target)} ${unit}; ${length(takeOff.least)} to ${length(takeOff.most)} ${unit} in all.`
  if (cure !== 'wider limits') return ''
  const wider = weighed.find(one => one.cure === cure)
  return wider
    ? `${port}: does not keep its limits at the worst; the drawing would have to allow ±${length(wider.figure, 2)} ${unit}.`
    : ''
}
