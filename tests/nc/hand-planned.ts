import { planCutting } from '../../src/cutting/plan-cutting.ts'
import { type NcProgram, ncPrograms } from '../../src/nc/nc-programs.ts'
import type { Programmed } from '../../src/nc/programmed.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import type { Fixture, Shop } from '../../src/shop/shop.ts'
import { stateOf } from '../cutting/hand-made.ts'
import { type Asked, linerOf, milledAt, shopWith } from '../ports/liner.ts'

export const PORTS: readonly Asked[] = [
  { name: 'exhaust', at: 0, top: 38, height: 16, width: 27, bridge: 3 },
  { name: 'main', at: 78, top: 44, up: 15, width: 17, back: 32, corner: { on: 'bore', radius: 2.6 } },
  { name: 'other main', at: -78, top: 44, up: 15, width: 17, back: 32, corner: { on: 'bore', radius: 2.6 } },
  { name: 'rear', at: 140, top: 44, up: 15, width: 12, back: 10, corner: { on: 'bore', radius: 2.6 } },
  { name: 'other rear', at: -140, top: 44, up: 15, width: 12, back: 10, corner: { on: 'bore', radius: 2.6 } },
  { name: 'boost', at: 180, top: 44.7, up: 50, corner: { on: 'cutter', radius: 1.5 } },
]
const asMilled = milledAt(47.8, 55.2, 0.2)

/** The ports planned and cut by hand, without a route. */
export function planned(
  changes: Partial<Shop> = {},
  asked: readonly Asked[] = PORTS,
  set: Partial<Shop['fixture']> = {},
): Programmed {
  const shop = shopWith(set, changes)
  const part = { ...linerOf(asked), material: { grade: '42CrMo4', written: '42CrMo4', hardness: 300 } }
  const { ports, fixture } = planPorts(part, shop, asMilled)
  const state = stateOf('mill-ports', asMilled.shape, asMilled.shape)
  const { setUps } = planCutting({ part, shop, states: [state], ports, start: 12 })
  return {
    part: { number: 'T-1', title: 'Liner', revision: 'A', kind: 'liner' },
    shop: { name: shop.name, fixture: shop.fixture, ...(shop.ncWords && { ncWords: shop.ncWords }) },
    ports,
    setUps,
    ...(fixture && { fixture }),
    fingerprint: 'abc123',
    operations: [{ number: 10, shape: asMilled.shape }],
  }
}

/** On a fixture with a tilt axis, its chuck so slim that no way of holding the part asks for another cutter. */
export const programsFor = (senses: Partial<Fixture>): readonly NcProgram[] =>
  ncPrograms(
    planned({ ncWords: { tiltAxis: 'B', spindleUp: 'G53 Z0' } }, PORTS, {
      chuck: { diameter: 56, length: 40 },
      ...senses,
    }),
  )
