import { describe, expect, it } from 'vitest'
import { openNcText } from '../../src/nc/nc-text.ts'

/** ISO 6983-1: % begins and ends a program, brackets a remark; the character set is that of ISO/IEC 646, which is ASCII. */
describe('a remark in a program', () => {
  it.each([
    ['part: OX-098-21', '(part: OX-098-21)'],
    ['(nested) (brackets)', '(nested brackets)'],
    ['at 50% of feed', '(at 50 per cent of feed)'],
    ['Übermaß ø3 ±2 µm', '(Ubermass o3 ?2 um)'],
    ['Café – 漢字', '(Cafe ? ??)'],
  ])('%s is written %s', (text, written) => {
    const nc = openNcText()
    nc.comment(text)
    expect(nc.text().split('\n')).toContain(written)
  })
})
