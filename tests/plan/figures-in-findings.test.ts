import { expect, it } from 'vitest'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { plausibleOf } from '../campaign/plausible-part.ts'

/** Places that a works reads of a unit: furnaces, hardness and speeds whole, lengths to the micrometre. Common practice, no source. */
const PLACES = { '°C': 0, HV: 0, rpm: 0, N: 0, h: 1, µm: 1, '%': 1, mm: 3 }
/** A tolerance stands there as the drawing asks it. */
const AS_DRAWN = 'inspection/no-gauge'

it('no finding of sixty plausible parts says a figure finer than anybody reads it', () => {
  const said = new Map<string, number>()
  for (let number = 0; number < 60; number++) {
    const { files } = plausibleOf(2631, number, { paper: 0, shop: 0.5 })
    const { part } = readPart(String(files['part.yaml']), 'part.yaml')
    const { shop } = files['shop.yaml'] ? readShop(files['shop.yaml'], 'shop.yaml') : { shop: BUILT_IN_SHOP }
    if (!part || !shop) continue
    const issue = { date: '2026-11-25', fingerprint: '0123456789ab', program: 'test' }
    const { findings } = makePlan({ part, shop, batch: { number: '1', quantity: 12 }, issue })
    for (const { code, message, hint = '' } of findings) {
      if (code === AS_DRAWN) continue
      const text = `${message}; ${hint}`
      for (const [, places = '', unit = ''] of text.matchAll(/\d(?:\.(\d+))? (mm|°C|µm|HV|rpm|h|N|%)(?![\p{L}/])/gu)) {
        said.set(unit, (said.get(unit) ?? 0) + 1)
        expect(places.length, text).toBeLessThanOrEqual(PLACES[unit as keyof typeof PLACES])
      }
    }
  }
  expect(said.get('mm')).toBeGreaterThan(100)
  expect(said.get('HV')).toBeGreaterThan(10)
})
