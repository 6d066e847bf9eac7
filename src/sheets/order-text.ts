import type { Units } from '../figures.ts'
import type { OutsideOrder } from '../orders/order.ts'
import type { Plan } from '../plan/plan.ts'
import { type OrderView, orderView } from './views/order-view.ts'
import { paperFigures } from './views/paper-figures.ts'
import type { ReturnForm } from './views/return-view.ts'

/** Letters to a line: what mail programs leave unbroken. Common practice, no source. */
const WIDTH = 72

/** An order in plain text, for an e-mail: what the sheet says, in its order. A blank to fill in is a line of dots. */
export function orderText(plan: Plan, order: OutsideOrder, units: Units): string {
  const view = orderView(plan, order, paperFigures(units))
  return [
    `ORDER ${view.reference}`,
    ...view.parties.flatMap(({ what, from, to }) => [field(`${what}, from`, from), field(`${what}, to`, to)]),
    '',
    ...wrapped(`${view.task} on ${view.pieces} pieces, ${view.mass} kg in all`),
    ...wrapped(view.part),
    ...wrapped(`${view.grade}, heat ${view.heat === '' ? 'as the bar certificate says' : view.heat}`),
    ...(view.which === '' ? [] : wrapped(`Marked ${view.which}`)),
    ...wrapped(view.days),
    field('Sent', view.sent),
    field('Wanted back', view.wanted),
    field(view.currency === '' ? 'Price' : `Price, ${view.currency}`, view.price),
    ...headed(
      'WHAT COMES TO YOU',
      view.arrives.map(({ what, limits, after }) => `${what}: ${limits} ${view.unit}, after ${after}`),
    ),
    ...headed('WHAT GOES BACK', view.finish.map(finishLine)),
    ...view.points.flatMap(({ number, label, text }) => ['', `${number}. ${label}`, ...wrapped(text, '   ')]),
    ...headed('MUST NOT HAPPEN', view.cautions),
    ...headed('SEND BACK WITH THE PIECES', [...view.slip, ...view.form].flatMap(returnLines)),
    '',
  ].join('\n')
}

const field = (name: string, value: string): string => `${name}: ${value === '' ? '..........' : value}`

const headed = (head: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ['', head, ...lines.flatMap(line => wrapped(`- ${line}`, '  ', ''))]

const finishLine = ({ what, unit, judged, drawn, gauge }: OrderView['finish'][number]): string =>
  [`${what}: ${judged} ${unit}`, drawn === judged ? '' : `drawn ${drawn}`, gauge].filter(text => text !== '').join('; ')

/** A line for each reading that is asked for; how many pieces have it. */
const returnLines = ({ blocks, rows }: ReturnForm): readonly string[] =>
  (blocks[0]?.heads ?? []).map(({ name, limits }, index) => {
    const asked = rows.flatMap(row => row.blocks).filter(({ cells }) => cells[index]?.measure).length
    const of = asked > 1 ? `, of ${asked} pieces` : ''
    return `${name}: ${limits.join(' / ')}${of}`
  })

/** Words in lines no longer than a mail keeps; a number and its unit stay together. */
function wrapped(text: string, indent = '', first = indent): readonly string[] {
  const lines: string[] = []
  let line = first
  for (const word of text.split(' ')) {
    const longer = line.trim() === '' ? `${line}${word}` : `${line} ${word}`
    if (longer.length > WIDTH && line.trim() !== '') {
      lines.push(line)
      line = `${indent}${word}`
    } else line = longer
  }
  return [...lines, line]
}
