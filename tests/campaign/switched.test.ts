import fc from 'fast-check'
import { describe, expect, it } from 'vitest'

type Fault = { readonly id: number; readonly start: number; readonly end: number; readonly to: string }
const {
  switched,
  fits,
}: {
  readonly switched: (text: string, faults: readonly Fault[]) => string
  readonly fits: (text: string, fault: Fault) => boolean
} = await import(new URL('./switched.mjs', import.meta.url).href)
const {
  mutationsOf,
  mutated,
}: {
  readonly mutationsOf: (text: string) => readonly Omit<Fault, 'id'>[]
  readonly mutated: (text: string, fault: Fault) => string
} = await import(new URL('./mutations.mjs', import.meta.url).href)

const faultsOf = (text: string): readonly Fault[] => mutationsOf(text).map((fault, id) => ({ ...fault, id }))

/** What an expression of a, b and c comes to, with one fault switched on or none. */
function comesTo(text: string, of: readonly number[], tried = -1): unknown {
  const world = { linerwrightFault: (id: number) => id === tried }
  return new Function('globalThis', 'a', 'b', 'c', `return ${text}`)(world, ...of)
}

describe('faults behind switches', () => {
  it.each([
    'a < b ? a + 1 : [b, c].some(one => one > 2 * a) && -c',
    'Math.max(a, Math.min(b - 1, c)) / 4 === (a || b)',
    '[a, b, c].map(one => one >= 2.5 ? [one] : []).flat().length % 2',
  ])('%s: each comes to what the text with that fault alone does, and none to what stands there', text => {
    const faults = faultsOf(text)
    const all = switched(text, faults)
    expect(faults.length).toBeGreaterThan(5)
    fc.assert(
      fc.property(
        fc.tuple(fc.integer({ min: -4, max: 4 }), fc.double({ min: -4, max: 4, noNaN: true }), fc.nat(4)),
        of => {
          expect(comesTo(all, of)).toEqual(comesTo(text, of))
          for (const fault of faults) expect(comesTo(all, of, fault.id)).toEqual(comesTo(mutated(text, fault), of))
        },
      ),
    )
  })

  it('leaves the key of a record alone, where no switch fits', () => {
    const text = 'const a = { 1: b < c }'
    expect(faultsOf(text).map(fault => fits(text, fault))).toEqual([false, true, true])
  })
})
