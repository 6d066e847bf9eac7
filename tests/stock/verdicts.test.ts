import { describe, expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'
import { type Planned, planned } from './planned.ts'

describe('verdicts', () => {
  const liner = (stock: string, more: (text: string) => string = text => text) =>
    planned(partFrom(`${more(LINER_TEXT)}stock: ${stock}\n`))
  const codes = (plan: Planned) => plan.findings.map(({ code }) => code).filter(code => code.startsWith('stock/'))

  it('call a stock that does not clean up thin, and say which would', () => {
    const plan = liner('{bore: 0.12}')
    expect(plan.entries.filter(({ verdict }) => verdict === 'thin').map(({ surface }) => surface)).toEqual(['bore'])
    const [finding] = plan.findings.filter(({ code }) => code === 'stock/thin')
    expect(finding?.at.line).toBe(14)
    const enough = Number(/leave ([\d.]+) mm/.exec(finding?.hint ?? '')?.[1])
    const better = liner(`{bore: ${enough}}`)
    expect(better.entries.map(({ verdict }) => verdict)).not.toContain('thin')
    const worse = liner(`{bore: ${enough - 0.01}}`)
    expect(worse.entries.map(({ verdict }) => verdict)).toContain('thin')
  })

  it('call a stock that eats the case deep, and say which would not', () => {
    const plan = liner('{bore: 0.80}')
    expect(plan.entries.find(({ surface }) => surface === 'bore')?.verdict).toBe('deep')
    const [finding] = plan.findings.filter(({ code }) => code === 'stock/deep')
    const less = Number(/leave ([\d.]+) mm/.exec(finding?.hint ?? '')?.[1])
    expect(liner(`{bore: ${less}}`).entries.map(({ verdict }) => verdict)).not.toContain('deep')
    expect(liner(`{bore: ${(less + 0.01).toFixed(2)}}`).entries.map(({ verdict }) => verdict)).toContain('deep')
  })

  it('call it impossible when no figure serves, and say what alone would make one possible', () => {
    const bent: Shop = {
      ...BUILT_IN_SHOP,
      measured: [{ process: 'nitride', pieces: 12, date: '2026-03-02', ovality: 0.9, bow: 0.3 }],
    }
    const plan = planned(partFrom(LINER_TEXT), bent)
    expect(plan.entries.map(({ verdict }) => verdict)).toContain('impossible')
    const [finding] = plan.findings.filter(({ code }) => code === 'stock/impossible')
    expect(finding?.hint).toMatch(/one of these would do: case [\d.]+ mm deeper/)
  })

  it('tell of a stock that no operation uses', () => {
    expect(codes(liner('{top: 0.1}', text => text.replace(/ {2}top:.*\n/, '')))).toContain('stock/unused')
    expect(codes(liner('{top: 0.1}'))).not.toContain('stock/unused')
  })

  it('warn of heavy stock on a hard surface', () => {
    expect(codes(liner('{outside: 0.26}'))).toContain('stock/heavy')
    expect(codes(liner('{outside: 0.25}'))).not.toContain('stock/heavy')
  })
})
