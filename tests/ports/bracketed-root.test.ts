import { describe, expect, it } from 'vitest'
import { bracketedRoot } from '../../src/ports/bracketed-root.ts'

describe('where a function takes a value', () => {
  // Derived: roots known in closed form.
  it.each<[string, (x: number) => number, number, number, number, number]>([
    ['x² = 2', x => x * x, 0, 3, 2, Math.SQRT2],
    ['cos x = 1/2', Math.cos, 0, 3, 0.5, Math.PI / 3],
    ['eˣ = 1000', Math.exp, -10, 10, 1000, Math.log(1000)],
    ['a value at the end itself', x => x, 0, 1, 1, 1],
    ['a falling line', x => 5 - 2 * x, 0, 4, 2, 1.5],
  ])('%s', (_, f, from, to, wanted, root) => {
    const found = bracketedRoot(f, { from, to, wanted, near: from })
    expect('at' in found ? found.at : found).toBeCloseTo(root, 9)
  })
  it('takes the one nearest to where it looks', () => {
    const found = (near: number) => bracketedRoot(x => x * x, { from: -3, to: 3, wanted: 4, near })
    expect(found(-1)).toMatchObject({ at: expect.closeTo(-2, 9) })
    expect(found(1)).toMatchObject({ at: expect.closeTo(2, 9) })
  })
  it('says what the function runs through where it never takes the value', () => {
    expect(bracketedRoot(x => x * x, { from: 1, to: 3, wanted: 10, near: 2 })).toEqual({ least: 1, most: 9 })
  })
  it('passes over where the function is not defined, and takes no jump for a crossing', () => {
    const root = bracketedRoot(x => (x < 1 ? undefined : Math.sqrt(x - 1)), { from: 0, to: 6, wanted: 2, near: 0 })
    expect(root).toMatchObject({ at: expect.closeTo(5, 9) })
    expect(bracketedRoot(() => undefined, { from: 0, to: 1, wanted: 1, near: 0 })).toEqual({ nowhere: true })
    expect(bracketedRoot(x => 1 / (x - 0.51), { from: 0, to: 1, wanted: 0, near: 0 })).not.toHaveProperty('at')
  })
})
