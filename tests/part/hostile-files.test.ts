import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'

const LINER = readFileSync('parts/OX-098-21.yaml', 'utf8')
const codes = (text: string) => readPart(text, 'part.yaml').findings.map(({ code }) => code)

describe('files that no works would write', () => {
  it.each([
    ['10 MB', 'a: 1\n'.repeat(2_000_000), 'input/too-large'],
    ['brackets thousands deep', `a: ${'['.repeat(100_000)}`, 'input/too-deep'],
    ['mappings a hundred deep', `a: ${'{a: '.repeat(100)}1${'}'.repeat(100)}`, 'input/too-deep'],
    [
      'a thousand block levels',
      Array.from({ length: 1000 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n'),
      'input/too-deep',
    ],
    ['no characters at all', '', 'input/empty'],
    ['a byte order mark alone', '\uFEFF', 'input/empty'],
    ['nothing', 'null', 'input/empty'],
  ])('%s', (_, text, code) => {
    expect(codes(text)).toEqual([code])
  })

  it('the same key tens of thousands of times: says so, and stops counting', () => {
    const found = codes('a: 1\n'.repeat(100_000))
    expect(new Set(found)).toEqual(new Set(['input/duplicate-key']))
    expect(found.length).toBeLessThan(100)
  })

  it('keys that objects have anyway are keys like any other', () => {
    expect(
      codes('__proto__: {part: 1}\nconstructor: 2\ntoString: 3\n').filter(code => code === 'input/unknown-key'),
    ).toHaveLength(3)
  })

  it('a byte order mark and line ends of another system change nothing', () => {
    const { part } = readPart(`\uFEFF${LINER.replaceAll('\n', '\r\n')}`, 'part.yaml')
    const { part: plain } = readPart(LINER, 'part.yaml')
    expect(part).toEqual({ ...plain, places: expect.anything() })
  })
})

describe('a value that takes longer than it is worth is not read, and the rest takes as long as it is long', () => {
  const processorTime = (work: () => void): number => {
    const began = process.cpuUsage()
    work()
    const { user, system } = process.cpuUsage(began)
    return user + system
  }
  const length = (written: string) => codes(LINER.replace('92 ±0.05', `"${written}"`))

  it.each([
    ['a deviation of four hundred digits', `110 +${'1'.repeat(400)}x`],
    ['four hundred spaces', `110${' '.repeat(400)}x`],
    ['signs and slashes without end', `110 ${'+1/ '.repeat(100)}x`],
  ])('%s', (_, written) => {
    // Against the reading of the same file with nothing odd in it, a hundred times.
    const floor = processorTime(() => Array.from({ length: 100 }, () => codes(LINER)))
    expect(processorTime(() => expect(length(written)).toContain('input/unreadable')) / floor).toBeLessThan(1)
  })

  it('a value, or a key, of over five hundred characters', () => {
    expect(length('1'.repeat(501))).toContain('input/too-large')
    expect(codes(`${'k'.repeat(501)}: 1`)).toContain('input/too-large')
  })

  it('fifty thousand unknown keys: the first two hundred, and how many more', () => {
    const withKeys = (count: number): string =>
      Array.from({ length: count }, (_, index) => `key-${index}: 1`).join('\n')
    const floor = processorTime(() => codes(withKeys(12_500)))
    const took = processorTime(() => {
      const { findings } = readPart(withKeys(50_000), 'part.yaml')
      expect(findings.length).toBeLessThan(220)
      expect(findings.map(({ message }) => message)).toContain('49803 more things are not as the file should be')
    })
    // Four times the keys: in proportion it is four times the work, each against each other sixteen.
    expect(took / floor).toBeLessThan(8)
  })

  it('a number too large to be one is none, in whatever unit', () => {
    expect(codes(LINER.replace('stroke: 54', 'stroke: 1e400 mm'))).toContain('input/not-finite')
  })
})

describe('what stands in the place of a text or a number is a finding', () => {
  const shopCodes = (text: string) => readShop(text, 'shop.yaml').findings.map(({ code }) => code)

  it.each([
    ['tools: [{name: {a: [1]}, kind: drill, diameter: 5}, {name: {a: [1]}, kind: drill, diameter: 6}]'],
    ['gauges: [{name: [[]], kind: bore, from: 1, to: 2, resolution: 0.1, uncertainty: 0.1}]'],
    ['fixture: {tilt-limits: [[0], {a: 1}]}'],
  ])('%s', text => {
    expect(shopCodes(text)).toContain('input/schema')
    expect(shopCodes(text)).not.toContain('input/name-twice')
  })

  it('a peg that is a mapping', () => {
    expect(codes(LINER.replace('stroke: 54', 'stroke: 54, rings: {from: 2, to: 8, pegs: [{a: 1}]}'))).toContain(
      'input/schema',
    )
  })
})

describe('a demo part spoilt at random never throws, and a part is given only without errors', () => {
  const pieces = [
    '{',
    '}',
    '[',
    ']',
    ': ',
    '- ',
    '\n',
    '\t',
    '#',
    '&a ',
    '*a',
    '!',
    '|',
    '"',
    "'",
    '0',
    '-1',
    '1e999',
    '.nan',
    'null',
    'x',
    '\u0000',
    '±',
    ',',
  ]
  const spoilt = fc
    .array(fc.tuple(fc.nat(LINER.length), fc.nat(6), fc.constantFrom(...pieces)), { minLength: 1, maxLength: 4 })
    .map(edits => edits.reduce((text, [at, cut, piece]) => text.slice(0, at) + piece + text.slice(at + cut), LINER))

  it('as a part and as a shop', () => {
    fc.assert(
      fc.property(spoilt, text => {
        const { part, findings } = readPart(text, 'part.yaml')
        expect(part === undefined).toBe(findings.some(({ severity }) => severity === 'error'))
        const lines = text.split('\n').length
        for (const { at, message } of findings) {
          expect(at.line).toBeGreaterThanOrEqual(1)
          expect(at.line).toBeLessThanOrEqual(lines + 1)
          expect(message).not.toMatch(/undefined|\[object/)
        }
        readShop(text, 'shop.yaml')
      }),
    )
  })
})
