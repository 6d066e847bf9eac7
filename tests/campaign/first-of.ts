import { campaign, count, type Kind, openTally, type Tally } from './campaign.ts'
import type { Share } from './plausible-part.ts'

/** Once for all, so that a run can be repeated; the long runs choose others: see the scripts beside this file. */
const SEED = 20_261_130

/** The first inputs of a campaign, a tenth of them through the whole packet and a third with the demo works' shop file. */
export const firstOf = (kind: Kind, inputs: number): Promise<Tally> => tallyOf(kind, inputs, { paper: 0.1, shop: 0.3 })

/** What a newcomer has: a part file, and no shop file. */
export const plannedWithoutShop = (inputs: number): Promise<Tally> => tallyOf('plausible', inputs, { paper: 0 })

async function tallyOf(kind: Kind, inputs: number, share: Share): Promise<Tally> {
  const tally = openTally()
  const options = { seed: SEED, ...share }
  await campaign({ kind, options, from: 0, to: inputs, until: Number.POSITIVE_INFINITY }, outcome =>
    count(tally, outcome),
  )
  return tally
}
