import { fixed } from '../figures.ts'
import { CARBURISED_STOCK } from '../handbook/carburising.ts'
import { NARROW_BAR } from '../handbook/hardening-growth.ts'
import { CARBURISED_RING, HOLLOW_PIN_SHARE, type QuenchWay, quenchOvality } from '../handbook/quench-ovality.ts'
import { barsOf, type Part } from '../part/part.ts'
import type { Millimetre } from '../units.ts'
import { thinnestWall } from '../wall.ts'

export type WayChosen = {
  readonly way: QuenchWay
  readonly why: string
  /** Largest less smallest diameter, expected. */
  readonly ovality: Millimetre
}

export const ASKED: string = 'asked for in the part file'

/** A free quench is enough where ovality is at most this share of the stock on diameter. Common practice, no source. */
export const SHARE_OF_STOCK: number = 1 / 3

export const hasNarrowBar = ({ ports }: Pick<Part, 'ports'>): boolean =>
  ports.some(port => barsOf(port).some(bar => bar < NARROW_BAR))

/** A plug fits one diameter, and a narrow bar does not bear it. */
export const holdingTool = (part: Part): 'plug' | 'press' =>
  hasNarrowBar(part) || part.bore.length > 1 ? 'press' : 'plug'

/**
 * As the part file asks; else free in oil where the usual stock bears the ovality, hot oil next, and on a tool that has to be
 * made only where neither does or ports weaken the wall.
 */
export function carburisedQuench(part: Part): WayChosen | undefined {
  if (part.hardening?.process !== 'carburising') return undefined
  const oval = (way: QuenchWay): Millimetre => {
    if (part.bore.length === 0) return 0.02
    const D = Math.max(...part.outside.map(({ size }) => size.nominal))
    const k = part.kind === 'pin' ? HOLLOW_PIN_SHARE * CARBURISED_RING[way] : CARBURISED_RING[way]
    return quenchOvality.value({ k, D, t: Math.max(0.1, thinnestWall(part)) })
  }
  const chosen = (way: QuenchWay, why: string): WayChosen => ({ way, why, ovality: oval(way) })
  const asked = part.hardening.quench
  if (asked) return chosen(asked, ASKED)
  if (part.kind === 'pin' || part.bore.length === 0) return chosen('free', 'a pin, hung')
  const tool = holdingTool(part)
  const free = `free in oil it would come ${fixed(oval('free'), 3)} mm oval`
  if (part.ports.length > 0)
    return chosen(tool, `ported: ${free}, and more at the windows${hasNarrowBar(part) ? NO_PLUG : ''}`)
  const bears = SHARE_OF_STOCK * 2 * CARBURISED_STOCK
  const third = `a third of the usual stock is ${fixed(bears, 3)}`
  if (oval('free') <= bears)
    return chosen('free', `free in oil it comes ${fixed(oval('free'), 3)} mm oval, and ${third}`)
  if (oval('hot') <= bears) return chosen('hot', `${free}, and ${third}`)
  return chosen(tool, `${free}, in hot oil ${fixed(oval('hot'), 3)}, and ${third}`)
}

const NO_PLUG = `; a bar under ${NARROW_BAR} mm bears no plug`

/** What of it decides how a carburised sleeve grows. */
export function carburisedShape(part: Part): { readonly way: QuenchWay; readonly bore: Millimetre } | undefined {
  const chosen = carburisedQuench(part)
  return chosen && part.bore.length > 0
    ? { way: chosen.way, bore: Math.min(...part.bore.map(({ size }) => size.nominal)) }
    : undefined
}
