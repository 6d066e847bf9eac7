import { expect, it } from 'vitest'
import { SHOP } from '../ports/proof/at-the-door.ts'
import { expectPartProved } from '../ports/proof/prove-part.ts'
import { linerText, randomLiners } from './random-ports.ts'

/** A hundred ports, four a liner. */
const LINERS = 25
/** Of those that are legal one by one so many are a plan without errors when all is judged together. */
const PLANNED = 0.8

/** The liners of a seed through the command's own door, on a fixture that holds them one way round. */
export function proveRandomLiners(asked: {
  seed: number
  headFaces: '+X' | '-X'
  positiveRotary: 'Y to Z' | 'Z to Y'
}): void {
  const shop = SHOP.replace('head-faces: +X', `head-faces: ${asked.headFaces}`)
    .replace('positive-rotary: Y to Z', `positive-rotary: ${asked.positiveRotary}`)
    .replace('tilt-limits: [-10, 60]', 'tilt-limits: [-60, 60]')
    // Head to the chuck the jaws have the flange alone: what they may hold it by is not what is proved here.
    .replace('force: 18000', 'force: 500000')
    .replace(/^habits:\n/m, 'habits:\n  least-grip: 4\n')
  let planned = 0
  it.each(randomLiners(LINERS, asked.seed).map((ports, i) => [i + 1, ports] as const))(
    'random liner %d has its windows as drawn',
    async (_, ports) => {
      if (await expectPartProved(linerText(ports), 48, shop)) planned += 1
    },
  )
  it('are nearly all planned', () => {
    expect(planned).toBeGreaterThanOrEqual(PLANNED * LINERS)
  })
}
