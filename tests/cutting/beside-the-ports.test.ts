import { describe, expect, it } from 'vitest'
import { OWN_BORE_SHOP } from '../shop/own-bore-shop.ts'
import { cut, partOf, portOf, stateOf, tube, windowOf } from './hand-made.ts'

/** Turning back less than 3 mm from a port's edge cuts the edge away: common practice, no source. */
describe('a wheel of 25 mm in a bore of 80 mm that turns back a third of its width outside the end', () => {
  const nitrided = partOf({ hardening: { process: 'gas nitriding' } } as never)
  const found = (bottom: number) => {
    const ports = [portOf([windowOf()], { top: bottom - 10, bottom, height: 10 })]
    const state = stateOf('grind-bore', tube(70, 53.88, true), tube(70, 54, true))
    return cut(nitrided, state, OWN_BORE_SHOP, ports).findings.filter(({ code }) => code === 'cutting/port-at-reversal')
  }

  // Its inner edge then stands 25 − 25/3 = 16.67 above the end, and a port must end 3 mm above that: at 60.33.
  it('says so of a port near the lower end, and of which end it is', () => {
    expect(found(61).map(({ message }) => message)).toEqual([expect.stringContaining('at the bottom')])
  })
  it('leaves a port alone that ends 20 mm above', () => {
    expect(found(60)).toEqual([])
  })
})
