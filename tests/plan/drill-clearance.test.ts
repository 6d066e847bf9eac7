import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { checkDrills } from '../../src/ports/checks/run-checks.ts'

const text = (path: string): string => readFileSync(new URL(`../../parts/${path}`, import.meta.url), 'utf8')
// Its holder would strike the seat over the tilted boost: derived, the works' own drill is 38 long.
const shops = text('shop.yaml').replace(/(name: drill 4\.3,.*flute-length: )24(.*reach: )38/, '$112$216')
const { part } = readPart(text('OX-098-21.yaml'), 'part.yaml')
const { shop } = readShop(shops, 'shop.yaml')
if (!part || !shop) throw new Error('demo does not read')
const issue = { date: '2026-11-30', fingerprint: '0bd5bebc6b1e', program: 'linerwright 0.1.0' }
const { plan, findings } = makePlan({ part, shop, batch: { number: 'test', quantity: 10 }, issue })

describe('a drill too short for its holder', () => {
  it('speaks against no window that is ramped into and not drilled', () => {
    const drilled = plan?.setUps.flatMap(({ windows }) =>
      windows.flatMap(({ port, cuts }) => (cuts.some(({ kind }) => kind === 'drill') ? [port] : [])),
    )
    expect(drilled).not.toContain('boost')
    expect(findings.filter(({ code }) => code === 'ports/holder-clearance')).toEqual([])
  })

  it('speaks against a window that is drilled', () => {
    const [exhaust] = plan?.ports ?? []
    const [window] = exhaust?.windows ?? []
    const held = window?.drillHeld
    if (!exhaust || !window || !held) throw new Error('the exhaust is drilled')
    const low = { ...exhaust, windows: [{ ...window, drillHeld: { ...held, room: -3.5 } }] }
    const [found] = checkDrills(part, shop, [low])
    expect(found).toMatchObject({ code: 'ports/holder-clearance', severity: 'error' })
    expect(found?.message).toContain('the holder over the 3.3 mm drill strikes the seat by 3.50 mm')
  })
})
