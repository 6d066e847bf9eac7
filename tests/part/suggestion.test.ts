import { describe, expect, it } from 'vitest'
import { suggestion, suggestionOrList } from '../../src/part/suggestion.ts'

describe('the name that was probably meant', () => {
  it.each([
    ['hieght', ['height', 'width', 'bottom'], 'height'],
    ['Height', ['height', 'width'], 'height'],
    ['ra', ['Ra', 'size'], 'Ra'],
    // A name of two letters is near every other.
    ['Rz', ['Ra', 'size'], undefined],
    ['elephant', ['height', 'width'], undefined],
    // Two classes are equally near: neither is offered.
    ['ISO 2768-k', ['ISO 2768-f', 'ISO 2768-m'], undefined],
    ['', ['height'], undefined],
  ] as const)('%s among %s: %s', (word, names, wanted) => {
    expect(suggestion(word, names)).toBe(wanted)
  })

  it('without a near one the names are listed', () => {
    expect(suggestionOrList('elephant', ['up', 'back'], 'known')).toBe('known: up, back')
  })
})
