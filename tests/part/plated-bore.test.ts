import { describe, expect, it } from 'vitest'
import { readPart } from '../../src/part/read-part.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'

const liner = (bore: string, stock: string) => `part: {number: OX-105-95, title: Liner, revision: A, kind: liner}
material: {grade: 42CrMo4, hardness: 300 HV, temper: 620}
body: {length: 100 ±0.1, outside: 70 h7, bore: ${bore}}
plating: {process: nickel silicon carbide, thickness: 0.075, surface: bore}
stock: ${stock}
`

// The limits: common practice, no source.
describe('a plated bore that no hone would leave a layer in is refused where it is written, and its near miss is planned', () => {
  it.each([
    ['a tolerance of two millimetres', '63 +2.12/0', '{}', '/body/bore', /within 2\.12 mm.*0\.5 mm at most/],
    ['a tolerance just over half a millimetre', '63 +0.502/0', '{}', '/body/bore', /0\.5 mm at most/],
    ['three quarters of a millimetre a side for the hone', '63 H7', '{hone: 1.5}', '/stock/hone', /1\.50 mm.*1\.0 mm/],
  ])('%s', (_, bore, stock, path, message) => {
    const { part, findings } = readPart(liner(bore, stock), 'part.yaml')
    expect(part).toBeUndefined()
    const line = path === '/stock/hone' ? 5 : 3
    expect(findings.filter(({ severity }) => severity === 'error')).toMatchObject([
      { code: 'input/out-of-range', message: expect.stringMatching(message), at: { line } },
    ])
  })

  it.each([
    ['63 +0.498/0', '{}'],
    ['63 H7', '{hone: 1}'],
  ])('%s with stock %s is reckoned without falling over', (bore, stock) => {
    const { part } = readPart(liner(bore, stock), 'part.yaml')
    if (!part) throw new Error('the part was not read')
    const { findings } = makePlan({
      part,
      shop: BUILT_IN_SHOP,
      batch: { number: '2631', quantity: 6 },
      issue: { date: '2026-11-30', fingerprint: '', program: 'linerwright' },
    })
    expect(findings.filter(({ code }) => code.startsWith('stock/') || code.startsWith('plating/'))).not.toEqual([])
  })
})
