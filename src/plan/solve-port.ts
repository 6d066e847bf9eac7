import { hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { type Bracketed, bracketedRoot } from '../ports/bracketed-root.ts'
import { planPorts } from '../ports/plan-ports.ts'
import type { Shop } from '../shop/shop.ts'
import type { AsMilled } from '../stock/stock.ts'
import type { PortFigure } from './port-figure.ts'
import type { Changed } from './sweep.ts'

/** Keys of a port that may be solved for. */
export const SOLVED_KEYS = ['height', 'width', 'opens', 'arc', 'top', 'bottom'] as const
export type SolvedKey = (typeof SOLVED_KEYS)[number]

/** Decimal places that a drawing gives a length or an angle. */
const PLACES = 2

export type PortProblem = {
  readonly part: Part
  readonly shop: Shop
  readonly asMilled: AsMilled
  /** Index in the part of the port whose key takes other values, and what it has now. */
  readonly port: number
  readonly key: SolvedKey
  readonly present: number
  readonly figure: PortFigure
  readonly wanted: number
  readonly changedTo: (value: number) => Changed
}

export type PortSolved =
  /** `value` is `exact` as a drawing writes it, `gives` what the figure is then. */
  | { readonly exact: number; readonly value: number; readonly gives: number }
  /** Where it was looked for, and what the figure runs through there, if there is one at all. */
  | { readonly from: number; readonly to: number; readonly reached?: { readonly least: number; readonly most: number } }

/** The value of a port's key that gives the figure: the ports are planned anew at every value that is tried. */
export function solvePort({
  part,
  shop,
  asMilled,
  port,
  key,
  present,
  figure,
  wanted,
  changedTo,
}: PortProblem): PortSolved {
  const role = part.ports[port]?.role ?? 'other'
  const figureAt = (value: number): number | undefined => {
    const changed = changedTo(value)
    if ('findings' in changed && hasErrors(changed.findings)) return undefined
    if (!('part' in changed)) return undefined
    const { ports, gasExchange } = planPorts(changed.part, shop, asMilled)
    // A port that cannot be cut leaves the others' areas behind.
    return gasExchange && ports.length === changed.part.ports.length ? figure.of(gasExchange, role) : undefined
  }
  const [from, to] = rangeOf(part, key)
  const root: Bracketed = bracketedRoot(figureAt, { from, to, wanted, near: present })
  if (!('at' in root)) return { from, to, ...('least' in root && { reached: root }) }
  const value = Number(root.at.toFixed(PLACES))
  const gives = figureAt(value)
  return gives === undefined ? { from, to } : { exact: root.at, value, gives }
}

/** Where a value may lie at all: the edges within the stroke, the width within the bore, angles within half a turn. */
function rangeOf({ engine, bore, length }: Part, key: SolvedKey): readonly [number, number] {
  const [crown, stroke] = [engine?.crownBelowTop ?? 0, engine?.stroke ?? length.nominal]
  switch (key) {
    case 'height':
      return [0.1, stroke]
    case 'width':
      return [0.1, 0.99 * Math.max(...bore.map(({ size }) => size.nominal))]
    case 'opens':
      return [30, 179.5]
    case 'arc':
      return [1, 170]
    case 'top':
    case 'bottom':
      return [Math.max(0.1, crown + 0.1), crown + stroke]
  }
}
