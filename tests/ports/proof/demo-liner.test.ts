import { expect, it } from 'vitest'
import { demo } from '../../commands/fake-world.ts'
import { expectPartProved } from './prove-part.ts'

// Random liners, a hundred ports each way round, are proved by `npm run test:proof`, and in CI.
it('the programs that the command writes leave every window of the demo liner as drawn', async () => {
  const proved = await expectPartProved(demo('OX-098-21.yaml'), 48)
  expect(proved?.plan.ports).toHaveLength(4)
}, 300_000)
