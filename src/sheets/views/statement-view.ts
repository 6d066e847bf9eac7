import { fixed } from '../../figures.ts'
import type { Characteristic } from '../../inspection/characteristic.ts'
import type { Plan } from '../../plan/plan.ts'
import type { Judged } from '../../record/judge-results.ts'
import type { Recorded } from '../../record/record-batch.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'
import { limitsOf, span } from './results-view.ts'

/** What was measured on the pieces of a finished batch, for who receives them. */
export type StatementView = {
  readonly facts: readonly { readonly what: string; readonly value: string }[]
  readonly tables: readonly {
    readonly heads: readonly {
      readonly number: string
      readonly name: string
      readonly limits: string
      readonly unit: string
      readonly uncertainty: string
    }[]
    readonly rows: readonly { readonly piece: string; readonly cells: readonly { readonly read: string }[] }[]
  }[]
  readonly gauges: string
  readonly doubts: readonly string[]
  readonly unmeasured: string
  readonly by: string
}

/** Columns that stand beside each other and can be read. */
const ACROSS = 7

/** What was measured of the finished part, each by the numbers under which it is measured. */
type Measured = { readonly of: Characteristic; readonly by: ReadonlyMap<string, Judged> }

/** Pieces that are neither lost nor out, and what of them was measured as finished; nothing where nothing was. */
export function statementView(
  plan: Plan,
  recorded: Recorded,
  figures: PaperFigures,
  dates: readonly string[],
): StatementView | undefined {
  const { judged, standing, hardness } = recorded
  const finals = plan.inspection.characteristics.filter(({ stage, unit }) => stage === 'final' && unit !== '-')
  const measured = finals.map(of => measuredAs(plan, of, judged)).filter(({ by }) => by.size > 0)
  const refused = new Set([...standing.lost, ...standing.out].map(({ serial }) => serial))
  const serials = [...new Set(measured.flatMap(({ by }) => [...by.keys()]))]
    .filter(serial => /^\d/.test(serial) && !refused.has(serial))
    .toSorted((one, other) => one.localeCompare(other, 'en', { numeric: true }))
  if (serials.length === 0) return undefined
  const without = finals.filter(({ number }) => !measured.some(({ of }) => of.number === number))
  const doubtful = measured.flatMap(({ of, by }) => {
    const pieces = serials.filter(serial => by.get(serial)?.verdict === 'in doubt')
    return pieces.length > 0 ? [`${of.name}: in doubt on piece ${pieces.join(', ')}.`] : []
  })
  return {
    facts: [
      { what: 'Pieces', value: `${serials.length}: ${serials.join(', ')}` },
      ...(dates.length > 0 ? [{ what: 'Measured', value: [...new Set([dates[0], dates.at(-1)])].join(' to ') }] : []),
      {
        what: 'Material',
        value: [plan.material.grade, ...(plan.batch.heat === undefined ? [] : [`heat ${plan.batch.heat}`])].join(', '),
      },
      ...(plan.case
        ? [
            {
              what: 'Hardening',
              value: `${plan.case.process}, depth ordered ${figures.length(plan.case.ordered.least, 2)} to ${figures.length(plan.case.ordered.most, 2)} ${figures.unit}`,
            },
          ]
        : []),
      ...(hardness
        ? [
            {
              what: 'Hardness, on the coupon',
              value: `${hardness.readings} readings, the least ${fixed(hardness.least, 0)} HV`,
            },
          ]
        : []),
    ],
    tables: Array.from({ length: Math.ceil(measured.length / ACROSS) }, (_, index) => {
      const part = measured.slice(index * ACROSS, (index + 1) * ACROSS)
      return {
        heads: part.map(({ of, by }) => {
          const [first] = by.values()
          return {
            number: String(of.number),
            name: of.name.replace(/, finished$/, ''),
            limits: limitsOf(of, figures),
            unit: of.unit === 'mm' ? figures.unit : of.unit,
            uncertainty: first && of.unit === 'mm' ? figures.length(first.uncertainty, 4) : DASH,
          }
        }),
        rows: serials.map(piece => ({
          piece,
          cells: part.map(({ by }) => {
            const one = by.get(piece)
            return { read: one ? span(one, one.form, figures) : DASH }
          }),
        })),
      }
    }),
    by: plan.shop.name,
    gauges: [...new Set(measured.flatMap(({ by }) => [...by.values()].map(({ gauge }) => gauge)))].join('; '),
    doubts: doubtful,
    unmeasured: without.map(({ name }) => name.replace(/, finished$/, '')).join('; '),
  }
}

/** As finished, or where it was read before with nothing changed since. */
function measuredAs({ inspection }: Plan, of: Characteristic, judged: readonly Judged[]): Measured {
  const numbers = new Set([of.number])
  for (let at: Characteristic | undefined = of; at?.readAt !== undefined; ) {
    const before: number = at.readAt
    numbers.add(before)
    at = inspection.characteristics.find(({ number }) => number === before)
  }
  const by = new Map<string, Judged>()
  for (const one of judged)
    if (numbers.has(one.characteristic) && (by.get(one.serial)?.after ?? 0) <= one.after) by.set(one.serial, one)
  return { of, by }
}
