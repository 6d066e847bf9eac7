import type { PlanToJudge } from '../record/characteristic-of.ts'

/** What the page knows of the plan: as much of it as judging a reading takes. */
export type PacketData = PlanToJudge & {
  readonly fingerprint: string
  readonly part: { readonly number: string; readonly revision: string }
  readonly batch: { readonly number: string }
  /** Of the sheets: in what lengths are read and typed. */
  readonly units: 'mm' | 'inch'
}
