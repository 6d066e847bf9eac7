import { expect, it } from 'vitest'
import { demo } from '../commands/fake-world.ts'
import { SHOP } from '../ports/proof/at-the-door.ts'
import { expectPartProved } from '../ports/proof/prove-part.ts'

/** The demo liner with three windows in its exhaust. */
const LINER = demo('OX-098-21.yaml').replace(/bridge: [\d.]+/, 'bridge: [2.6, 2.6]')

/** Half of the eight, in which every two senses meet each way; that all eight cut alike, tests/nc/every-sense holds move for move. */
const SENSES = [
  ['+X', 'Y to Z', 'Z to X'],
  ['+X', 'Z to Y', 'X to Z'],
  ['-X', 'Y to Z', 'X to Z'],
  ['-X', 'Z to Y', 'Z to X'],
] as const

it.each(SENSES)(
  'head %s, rotary %s, tilt axis %s: all windows come out as drawn, and nothing is touched',
  async (...senses) => {
    const [headFaces, positiveRotary, positiveTilt] = senses
    const shop = SHOP.replace('head-faces: +X', `head-faces: ${headFaces}`)
      .replace('positive-rotary: Y to Z', `positive-rotary: ${positiveRotary}, positive-tilt: ${positiveTilt}`)
      .replace('tilt-limits: [-10, 60]', 'tilt-limits: [-60, 60]')
      .replace('force: 18000', 'force: 500000')
      .replace(/^habits:\n/m, 'nc-words: {tilt-axis: B}\nhabits:\n  least-grip: 4\n')
    const proved = await expectPartProved(LINER, 48, shop)
    expect(proved?.plan.ports.map(({ windows }) => windows.length)).toEqual([3, 1, 1, 1])
  },
)
