import { describe, expect, it } from 'vitest'
import { campaign, count, type Kind, openTally, type Tally } from './campaign.ts'

/** Once for all, so that a run can be repeated; the long runs choose others: see the two scripts beside this file. */
const SEED = 20_261_130

async function run(kind: Kind, inputs: number): Promise<Tally> {
  const tally = openTally()
  const options = { seed: SEED, paper: 0.1 }
  await campaign({ kind, options, from: 0, to: inputs, until: Number.POSITIVE_INFINITY }, outcome =>
    count(tally, outcome),
  )
  return tally
}

describe('whatever the files say, the program refuses or plans: no fall, no hang, no figure that is none', () => {
  it('300 damaged part, shop and batch files', { timeout: 300_000 }, async () => {
    const { done, faults, refusals } = await run('mutants', 300)
    expect(faults).toEqual([])
    expect(done).toBe(300)
    // The damage is damage: the reader refuses many of them, and for many reasons.
    expect(refusals.size).toBeGreaterThan(20)
  })

  it('60 plausible parts of all kinds, some of them through the whole packet', { timeout: 300_000 }, async () => {
    const { done, faults, statuses } = await run('plausible', 60)
    expect(faults).toEqual([])
    expect(done).toBe(60)
    expect(statuses.get('status 0')).toBeGreaterThan(0)
  })
})
