import { describe, expect, it } from 'vitest'

type Mutation = { readonly start: number; readonly end: number; readonly to: string }
type Mutations = {
  readonly mutationsOf: (text: string) => readonly Mutation[]
  readonly mutated: (text: string, mutation: Mutation) => string
}

const { mutationsOf, mutated }: Mutations = await import(new URL('./mutations.mjs', import.meta.url).href)
const changes = (text: string) => mutationsOf(text).map(mutation => mutated(text, mutation))

/** Expected by the list of faults in `mutations.mjs`, written out by hand. */
describe('the small faults that a campaign puts into a source', () => {
  it.each([
    ['f(a < b)', ['f((a <= b))', 'f((a >= b))']],
    ['f(a === b)', ['f((a !== b))']],
    ['f(a + b)', ['f((a - b))']],
    ['f((a + b) / c)', ['f(((a - b)) / c)', 'f(((a + b) * c))']],
    ['f(a * b)', ['f((a / b))']],
    ['f(a && b)', ['f((a || b))']],
    ['f(-a)', ['f((a))']],
    ['f(a ? b : c)', ['f(((a) ? c : b))']],
    ['f(Math.min(a, b))', ['f(Math.max(a, b))']],
    ['f(0)', ['f(1)']],
    ['f(0.5)', ['f(0.55)']],
    ['if (a) f()', ['if (!(a)) f()']],
    ['const f = () => [a]', ['const f = () => []']],
    ['const f = () => a.filter(b)', ['const f = () => []']],
  ])('makes of %s one of %j', (text, expected) => {
    expect(changes(text).toSorted()).toEqual(expected.toSorted())
  })

  it.each([
    '// 1 < 2 && -3',
    'f("1 < 2 && -3")',
    'type A = 1 | -2',
    "import { a } from '1'",
    'const a: 1 = b as 2',
    'f(1e-6)',
  ])('leaves %s alone', text => {
    expect(changes(text)).toEqual([])
  })

  it('reaches the values of a template and what is cast', () => {
    expect(changes(`f(\`1\${a < b}\`)`)).toHaveLength(2)
    expect(changes('f(-a as A)')).toEqual(['f((a) as A)'])
  })
})
