import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Machine, Shop } from '../../src/shop/shop.ts'

/** Invented. 20 000 rpm gives a 36 mm wheel 38 m/s, over the 20 to 30 m/s that alumina is run at: common practice, no source. */
const MACHINES: readonly Machine[] = [
  {
    workCentre: 'internal grinder',
    name: 'internal grinder with face spindle',
    processes: ['grind'],
    speedLimit: 20000,
    power: 3,
    setup: 60,
    handling: 3,
  },
  {
    workCentre: 'honing machine',
    name: 'vertical honing machine',
    processes: ['hone', 'lap'],
    speedLimit: 400,
    power: 2.2,
    setup: 30,
    handling: 2,
  },
]

/** The built-in works with what it sends out for: an internal grinder, a honing machine and a roundness instrument. */
export const OWN_BORE_SHOP: Shop = {
  ...BUILT_IN_SHOP,
  machines: [...BUILT_IN_SHOP.machines, ...MACHINES],
  gauges: [
    ...BUILT_IN_SHOP.gauges,
    { name: 'roundness instrument', kind: 'form', from: 5, to: 150, resolution: 0.00001, uncertainty: 0.0002 },
  ],
}
