import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { withItem } from '../../src/part/add-to-list.ts'

describe('an item at the end of a list', () => {
  test.each([
    ['a block', 'shop: {name: A}\nmeasured:\n  - {a: 1} # one\n  - {a: 2}\n# the rest\nrates: {b: 1}\n'],
    ['a block of blocks', 'measured:\n  - a: 1\n    b: 2\n  - a: 2 # two\nrates: {b: 1}\n'],
    ['a block at the end without a line end', 'measured:\n- {a: 1}'],
    ['a flow', 'measured: [{a: 1}, {a: 2}] # both\nrates: {b: 1}\n'],
    ['an empty flow', 'measured: []\nrates: {b: 1}\n'],
    ['nothing', 'rates: {b: 1}\n'],
    ['no list under its key', 'measured:\nrates: {b: 1}\n'],
    ['an empty file', ''],
  ])('of %s is read back, and all else stays', (_, text) => {
    const edited = withItem(text, 'measured', '{a: 9}')
    const before = (parse(text) ?? {}) as { readonly measured?: readonly unknown[] | null; readonly rates?: unknown }
    expect(parse(edited)).toEqual({ ...before, measured: [...(before.measured ?? []), { a: 9 }] })
    for (const comment of text.match(/#.*/g) ?? []) expect(edited).toContain(comment)
  })
})
