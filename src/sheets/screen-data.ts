import type { Units } from '../figures.ts'
import type { PacketData } from '../page/packet-data.ts'
import type { Plan } from '../plan/plan.ts'

/** What of the plan goes into the page, so that it can judge a reading. */
export const packetData = (plan: Plan, units: Units): PacketData => ({
  fingerprint: plan.fingerprint,
  part: { number: plan.part.number, revision: plan.part.revision },
  batch: { number: plan.batch.number },
  units,
  material: { grade: plan.material.grade },
  operations: plan.operations.map(({ number, process, place }) => ({ number, process, place, sizes: [] })),
  inspection: { characteristics: plan.inspection.characteristics },
})

/** A script that the page runs, and what allows that one alone: its digest by the words of the W3C's Content Security Policy. */
export type PageScript = { readonly text: string; readonly digest: string }

/** JSON in a page: no letter of it can end the element that it stands in. */
export const jsonInPage = (data: PacketData): string => JSON.stringify(data).replaceAll('<', '\\u003c')
