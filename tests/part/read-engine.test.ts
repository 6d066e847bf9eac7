import { describe, expect, it } from 'vitest'
import { readPart } from '../../src/part/read-part.ts'

const read = (engine: string) => {
  const { part, findings } = readPart(
    `part: {number: T-1, title: Liner, revision: A, kind: liner}
engine: {stroke: 54, rod: 100, ${engine}}
material: {grade: 42CrMo4}
body: {length: 92, outside: 55 g6, bore: 48 H6}
`,
    'liner.yaml',
  )
  return { engine: part?.engine, codes: findings.map(({ code, at }) => `${code} ${at.line}:${at.column}`) }
}

describe('what the part file may say of head and piston', () => {
  it('reads a head volume in cm³ whatever unit it is written in', () => {
    expect(read('head-volume: 11.5')).toMatchObject({ engine: { headVolume: 11.5 }, codes: [] })
    expect(read('head-volume: 11500 mm³').engine?.headVolume).toBeCloseTo(11.5, 9)
  })
  it('doubts a volume that no engine would have: it is mm³, or the combustion chamber of another', () => {
    expect(read('head-volume: 11500').codes).toEqual(['input/implausible 2:45'])
    expect(read('head-volume: 0.7').codes).toEqual(['input/implausible 2:45'])
    expect(read('head-volume: 2.6').codes).toEqual([])
  })
  it('reads skirt and rings, pegs within half a turn either way', () => {
    const { engine, codes } = read('skirt: 60, rings: {from: 3, to: 8, pegs: [130, 230]}')
    expect(codes).toEqual([])
    expect(engine).toMatchObject({ skirt: 60, rings: { from: 3, to: 8, pegs: [130, -130] } })
    expect(read('rings: none').engine?.rings).toBe('none')
  })
  it('says what is wrong with rings that cannot be', () => {
    expect(read('rings: two').codes).toEqual(['input/unreadable 2:39'])
    expect(read('rings: {from: 8, to: 3}').codes).toEqual(['input/out-of-range 2:53'])
    expect(read('rings: {pegs: [near]}').codes[0]).toMatch(/^input\/unreadable 2:/)
  })
})
