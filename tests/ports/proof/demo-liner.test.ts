import { expect, it } from 'vitest'
import { demo } from '../../commands/fake-world.ts'
import { expectPartProved } from './prove-part.ts'

/** The demo liner with its bridged exhaust and one of its inclined transfers: a drill, ramps, and two cutters in one window. */
const LINER = demo('OX-098-21.yaml')
  .replace(/ {2}- \{name: boost.*\n/, '')
  .replace(', mirror: true', '')

// The whole demo liner, the others of the demo and random ones, a hundred ports each way round, by `npm run test:proof` and in CI.
it('the programs that the command writes leave every window of the demo liner as drawn', async () => {
  const proved = await expectPartProved(LINER, 48)
  expect(proved?.plan.ports.map(({ windows }) => windows.length)).toEqual([2, 1])
  expect(proved?.plan.setUps.map(({ work }) => work)).toContain('finish corners')
}, 300_000)
