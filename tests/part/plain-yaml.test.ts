import { describe, expect, it } from 'vitest'
import { readPlainYaml } from '../../src/part/plain-yaml.ts'
import { openWhole } from '../../src/part/yaml-source.ts'
import { BATCHES, PARTS, SHOPS } from '../campaign/bases.ts'
import { damaged } from '../campaign/damage.ts'
import { randomOf } from '../campaign/random.ts'

const FILES = [...PARTS, ...SHOPS, ...BATCHES]
const SEED = 20261130

/** Two independent readers of YAML 1.2: the packages js-yaml and yaml. */
describe('the reader of plain files, held against the whole one', () => {
  it.each(FILES)('takes a file as it comes and finds the same values and places: %.40s', text => {
    const plain = readPlainYaml(text, 'file.yaml')
    expect(plain).toEqual(openWhole(text, 'file.yaml').source)
  })

  it('finds the same in whatever damaged file it takes, and takes none that has a fault', () => {
    let taken = 0
    for (let number = 0; number < 400; number++) {
      const random = randomOf(SEED, number)
      const text = damaged(random, random.any(FILES) ?? '')
      const plain = readPlainYaml(text, 'file.yaml')
      if (!plain) continue
      taken += 1
      expect(plain, text).toEqual(openWhole(text, 'file.yaml').source)
    }
    expect(taken).toBeGreaterThan(100)
  })

  it.each([
    ['a key twice', 'a: 1\na: 2\n'],
    ['an anchor', 'a: &x 1\nb: *x\n'],
    ['a tag', 'a: !!str 1\n'],
    ['an empty value', 'a:\nb: 1\n'],
    ['nothing as a value', 'a: ~\n'],
    ['a number in sixteens', 'a: 0x10\n'],
    ['a number without end', 'a: 1e999\n'],
    ['a block text', 'a: |\n  b\n'],
    ['a text over two lines', 'a: b\n  c\n'],
    ['two documents', 'a: 1\n---\nb: 2\n'],
    ['a directive', '%YAML 1.1\n---\na: 1\n'],
    ['a tab', 'a:\t1\n'],
    ['a bracket left open', 'a: [1\n'],
    ['a long text', `a: ${'b'.repeat(501)}\n`],
    ['a list', '- 1\n'],
  ])('leaves to it a file with %s', (_, text) => {
    expect(readPlainYaml(text, 'file.yaml')).toBeUndefined()
  })
})
