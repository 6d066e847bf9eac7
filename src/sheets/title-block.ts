import type { Plan } from '../plan/plan.ts'
import type { TitleBlock } from './page-frame.ts'

export const titleBlock = ({ part, shop, batch, date, program, fingerprint }: Plan): TitleBlock => ({
  legalOwner: shop.name,
  identificationNumber: part.number,
  revision: part.revision,
  title: part.title,
  batch: batch.number,
  dateOfIssue: date,
  creator: program,
  fingerprint,
})
