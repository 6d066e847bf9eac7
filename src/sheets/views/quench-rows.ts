import { fixed } from '../../figures.ts'
import type { CaseQuench } from '../../hardening/case-plan.ts'
import type { Quench } from '../../hardening/choose-quench.ts'
import type { QuenchPlan } from '../../hardening/quench-plan.ts'
import type { Spread } from '../../limits.ts'

/** Lengths as paper or screen writes them. */
type Lengths = { readonly length: (value: number) => string; readonly unit: string }

/** What the hardener of a part that is hardened through is asked for and what it does, a line each. */
export function quenchRows(planned: QuenchPlan, { length, unit }: Lengths): readonly { what: string; value: string }[] {
  const { process, quench, asked, expected, temper, stabilised, runsTo, austenite, growth, records } = planned
  const range = ({ least, nominal, most }: Spread) =>
    `${length(nominal)} (${length(least)} to ${length(most)}) ${unit} a side`
  const { bore } = growth
  const opens = { least: -bore.most, nominal: -bore.nominal, most: -bore.least }
  return [
    { what: 'Process', value: `${process}, temper ${fixed(temper, 0)} °C at once after the quench` },
    { what: 'Quench', value: `${quench.called}: ${quench.why}` },
    {
      what: 'Hardness',
      value: `${asked ? `not under ${fixed(asked.HRC, 0)} HRC (${fixed(asked.HV, 0)} HV), ` : ''}${fixed(expected, 1)} HRC expected`,
    },
    outOfRound(quench, { length, unit }),
    { what: 'Outside grows', value: range(growth.outside) },
    ...(bore.nominal === 0 ? [] : [{ what: 'Bore opens', value: range(opens) }]),
    {
      what: 'Austenite',
      value: `${austenite.least} to ${austenite.most} % from the quench${stabilised ? ', broken down by the temper' : ', which grows later'}`,
    },
    { what: 'May run at', value: `${fixed(runsTo, 0)} °C at most` },
    ...records.map(({ record, used, why }) => ({
      what: used ? 'Measured before' : 'Passed over',
      value: `${record}: ${why}`,
    })),
  ]
}

/** Of a carburised part, beside its case. */
export const caseQuenchRows = (
  { quench, temper }: CaseQuench,
  lengths: Lengths,
): readonly { what: string; value: string }[] => [
  { what: 'Quench', value: `${quench.called}: ${quench.why}` },
  { what: 'Temper', value: `${fixed(temper.least, 0)} to ${fixed(temper.most, 0)} °C at once after the quench` },
  outOfRound(quench, lengths),
]

const outOfRound = ({ ovality: { least, nominal, most } }: Quench, { length, unit }: Lengths) => ({
  what: 'Out of round from the quench',
  value: `${length(nominal)} (${length(least)} to ${length(most)}) ${unit}`,
})
