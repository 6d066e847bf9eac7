import type { CaseQuench } from '../hardening/case-plan.ts'
import type { Quench } from '../hardening/choose-quench.ts'
import { AS_HARDENED } from './case-words.ts'
import type { Quantity } from './order.ts'
import type { OrderSource } from './order-source.ts'
import { celsius, length } from './quantity.ts'
import { type Draft, point, say, sentence } from './say.ts'

/** How it is quenched, what our stock rests on. */
export const quenchAsked = ({ ported }: Pick<OrderSource, 'ported'>, quench: Quench): readonly Draft[] =>
  point(
    'Quench',
    `${sentence(quench.called)}. Our stock is planned for it: ${quench.why}.`,
    quench.way === 'press' || quench.way === 'plug'
      ? 'Quote the tool apart from the work; where you would rather quench in another way, tell us before and we plan the stock anew.'
      : 'Another way of quenching only with our consent.',
    ported &&
      'Windows crack from their corners: warm through slowly, and do not let the part go cold before the temper.',
  )

/** Of a carburised part. Its case keeps 58 HRC to 200 °C (memory). */
export const caseTempered = ({ temper, austenite }: CaseQuench): readonly Draft[] =>
  point(
    'Temper',
    say`At once after the quench, while the part is still warm to the hand: we reckon with ${celsius('planned', 'temper', temper)}.`,
    say`The quench is expected to leave ${austeniteLeft(austenite)} of austenite in the case, which grows later. No sub-zero treatment without our consent: our sizes are planned without it.`,
  )

export const austeniteLeft = ({ least, most }: { readonly least: number; readonly most: number }): Quantity => ({
  label: 'austenite left',
  standing: 'expected',
  least,
  most,
  unit: '%',
  places: 0,
  written: 'range',
})

/** Where a plug or a segment sets the bore, what it is to come to. */
export function boreFromQuench({ ladders, operations }: OrderSource, { way }: Quench): readonly Draft[] {
  if (way !== 'press' && way !== 'plug') return []
  const hardened = operations.find(({ purpose }) => purpose === 'case-harden')?.number
  const lines = ladders.flatMap(({ surface, kind, states }) => {
    const state = kind === 'bore' ? states.find(({ operation }) => operation === hardened) : undefined
    if (!state) return []
    const size = length(
      'asked',
      `${surface} Ø`,
      { least: state.lower, most: state.upper },
      { state: AS_HARDENED, written: 'hole' },
    )
    return [
      say`${way === 'plug' ? 'Make the plug' : 'Set the segments'} so that ${surface} comes to ${size} when it is hardened and tempered.`,
    ]
  })
  return point('Bore from the quench', ...lines)
}
