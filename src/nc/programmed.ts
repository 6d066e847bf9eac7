import type { SetUp } from '../cutting/set-up.ts'
import type { Plan } from '../plan/plan.ts'
import type { Fixture } from '../shop/shop.ts'
import type { AsMilled } from '../stock/stock.ts'
import type { Millimetre } from '../units.ts'

/** As much of the Plan as programs are written from. */
export type Programmed = Pick<Plan, 'part' | 'shop' | 'ports' | 'setUps' | 'clocking' | 'fixture' | 'fingerprint'> & {
  readonly operations: readonly Pick<Plan['operations'][number], 'number' | 'shape'>[]
}

/** One set-up with what its program is written from. */
export type Written = {
  readonly plan: Programmed
  readonly fixture: Fixture
  readonly setUp: SetUp
  readonly asMilled: AsMilled
  readonly safe: Millimetre
}
