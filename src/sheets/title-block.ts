import type { Plan } from '../plan/plan.ts'
import type { TitleBlock } from './page-frame.ts'

/** `note`: what else to know of this paper. What it replaces is in the plan. */
export function titleBlock(
  { part, shop, batch, date, program, fingerprint, replaces }: Plan,
  note?: string,
): TitleBlock {
  const notes = [
    ...(note === undefined ? [] : [note]),
    ...(replaces === undefined ? [] : [`replaces ${replaces.fingerprint} of ${replaces.date}`]),
  ]
  return {
    legalOwner: shop.name,
    identificationNumber: part.number,
    revision: part.revision,
    title: part.title,
    batch: batch.number,
    dateOfIssue: date,
    creator: program,
    fingerprint,
    ...(notes.length > 0 && { note: notes.join(', ') }),
  }
}
