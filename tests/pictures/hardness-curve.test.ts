import { describe, expect, it } from 'vitest'
import { drawHardnessCurve } from '../../src/pictures/hardness-curve.ts'
import { demo, planOf } from '../orders/planned-orders.ts'
import { faultsOf } from './legibility.ts'
import { measure } from './measure.ts'

const INDUCTION = `part: {number: OX-098-93, title: Test pin, revision: A, kind: pin}
material: {grade: C45, hardness: 220 HV}
body:
  length: 80 ±0.1
  outside: {size: 30 h6, Ra: 0.4, name: pin}
hardening: {process: induction hardening, hardness: min 550 HV, depth: min 1.0}
`

const drawn = (text: string) => {
  const plan = planOf(text)
  const { case: hardened } = plan
  if (!hardened) throw new Error('no case')
  const picture = drawHardnessCurve({ plan, hardened, room: { width: 510, height: 240 }, measure })
  const texts = picture.marks.flatMap(mark => (mark.kind === 'text' ? [mark.text] : []))
  return { hardened, picture, texts }
}

describe('picture of the hardness against depth', () => {
  it.each([
    ['a nitrided liner', demo('OX-098-21'), 350, 470],
    // The two levels lie close, and share a name.
    ['a liner of which little is asked', demo('OX-098-21', ['min 470 HV', 'min 360 HV']), 350, 360],
    ['a carburised pin', demo('OX-098-34'), 550, 650],
    ['a pin hardened by induction', INDUCTION, 440, 550],
  ] as const)('names every line of %s, where it can be read', (_, text, limit, asked) => {
    const { texts, picture } = drawn(text)
    const said = texts.join('\n')
    for (const name of [
      'hardest',
      'expected',
      'softest',
      'least',
      'middle',
      'most comes off',
      'of case asked for',
      `the depth ends at ${limit} HV`,
      `surface: ${asked} HV`,
    ])
      expect(said).toContain(name)
    expect(faultsOf(picture, measure).filter(fault => !/line through/.test(fault))).toEqual([])
  })

  it('carries what comes off up to the hardness that is then left', () => {
    const { hardened, picture, texts } = drawn(demo('OX-098-21'))
    const carried = picture.marks.filter(
      mark => mark.kind === 'line' && mark.x1 === mark.x2 && Math.abs(mark.y1 - mark.y2) > 40,
    )
    // The side axis; least, middle and most of the bore, and the most of the seat.
    expect(carried).toHaveLength(5)
    for (const { most } of hardened.hardnessAfter)
      expect(texts.some(text => text.endsWith(`off, then ${most.expected.toFixed(0)} HV`))).toBe(true)
  })

  it('draws the plateau of induction hardening level to four fifths of the depth (estimate)', () => {
    const { profile, ordered, surfaceHardness, coreHardness } = drawn(INDUCTION).hardened
    const at = profile.find(({ depth }) => depth >= 0.8 * ordered.least)
    expect(((at?.expected ?? 0) - coreHardness) / (surfaceHardness - coreHardness)).toBeGreaterThan(0.95)
  })
})
