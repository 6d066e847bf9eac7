import type { Plan } from '../plan/plan.ts'
import { type PacketSet, packetSets } from './sets.ts'
import { paperFigures } from './views/paper-figures.ts'

/** Sheets of a packet that say something else in another, by set. */
export type Withdrawn = {
  readonly set: string
  readonly title: string
  /** As their corners and heads call them. */
  readonly changed: readonly string[]
  /** Of those that say the same but for revision, date and fingerprint. */
  readonly alike: number
}

/** What is said on each sheet is held against what the other plan's says; drawings follow the figures that stand beside them. */
export function sheetsWithdrawn(was: Plan, is: Plan): readonly Withdrawn[] {
  const { revision } = was.part
  const asOld: Plan = {
    ...is,
    part: { ...is.part, revision },
    orders: is.orders.map(order => ({ ...order, part: { ...order.part, revision } })),
    date: was.date,
    fingerprint: was.fingerprint,
  }
  const renamed = (text: string): string =>
    text.replaceAll(`${is.part.number}-${is.part.revision}-`, `${was.part.number}-${revision}-`)
  const sheets = (sets: readonly PacketSet[]) =>
    new Map(
      sets.flatMap(({ name, sheets }) =>
        sheets.map(
          ({ corner, heading, view }) => [`${name} ${corner} ${heading}`, renamed(JSON.stringify(view))] as const,
        ),
      ),
    )
  const now = sheets(setsOf(asOld))
  return setsOf(was)
    .filter(({ reader }) => reader !== 'asked' && reader !== 'file')
    .flatMap(({ name, title, sheets: own }) => {
      const changed = own.filter(
        ({ corner, heading, view }) => now.get(`${name} ${corner} ${heading}`) !== renamed(JSON.stringify(view)),
      )
      const said = [
        ...new Set(changed.map(({ corner, heading }) => (corner === heading ? heading : `${corner} ${heading}`))),
      ]
      return said.length === 0 ? [] : [{ set: name, title, changed: said, alike: own.length - changed.length }]
    })
}

const setsOf = (plan: Plan): readonly PacketSet[] => packetSets(plan, [], paperFigures('mm'))
