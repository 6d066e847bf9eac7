import { describe, expect, it } from 'vitest'
import { readPart } from '../../src/part/read-part.ts'
import { planRoute } from '../../src/route/plan-route.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'

const sleeve = (
  depth: number,
  masked: string,
): string => `part: {number: OX-098-95, title: Sleeve, revision: A, kind: sleeve}
material: {grade: 42CrMo4, hardness: 300 HV, temper: 620}
body: {length: 60 ±0.1, outside: {size: 34 ±0.01, name: seat}, bore: 32 ±0.01}
hardening: {process: gas nitriding, hardness: min 500 HV, depth: min ${depth}${masked && `, masked: [${masked}]`}}
`
const eaten = (text: string): readonly string[] =>
  readPart(text, 'part.yaml')
    .findings.filter(({ code, message }) => code === 'input/wall' && message.startsWith('a case'))
    .map(({ message }) => message)

// A wall of 0.99 mm at its thinnest.
describe('a case through the wall', () => {
  it('is refused where both sides together leave no core', () => {
    expect(eaten(sleeve(0.5, ''))).toEqual(['a case of 0.5 mm from both sides goes through the wall of 0.99 mm'])
    expect(eaten(sleeve(0.48, ''))).toEqual([])
  })
  it.each(['bore', 'seat', 'outside'])('counts one side alone where %s is masked', masked => {
    expect(eaten(sleeve(0.5, masked))).toEqual([])
    const side = masked === 'bore' ? 'the outside' : 'the bore'
    expect(eaten(sleeve(1, masked))).toEqual([`a case of 1 mm from ${side} goes through the wall of 0.99 mm`])
  })
  it('is nobody’s where both sides are masked', () => {
    expect(eaten(sleeve(1, 'bore, seat'))).toEqual([])
  })
})

describe('the surfaces that are hardened', () => {
  it.each(['seat', 'outside'])('are without what is masked as %s', masked => {
    const { part } = readPart(sleeve(0.3, masked), 'part.yaml')
    const route = part && planRoute(part, BUILT_IN_SHOP)
    const nitrided = route?.operations.find(({ purpose }) => purpose === 'nitride')
    expect(nitrided?.surfaces).toEqual(['bore', 'top', 'bottom'])
  })
})
