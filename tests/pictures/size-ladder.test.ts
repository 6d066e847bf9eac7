import { describe, expect, it } from 'vitest'
import { drawLadders } from '../../src/pictures/size-ladder.ts'
import { demoPlan } from '../sheets/demo-packet.ts'
import { faultsOf } from './legibility.ts'
import { measure } from './measure.ts'

const wordsOf = (name: string): readonly string[] =>
  drawLadders(demoPlan(name), 510, measure).marks.flatMap(mark => (mark.kind === 'text' ? [mark.text] : []))

describe('the ladders of a part', () => {
  it.each([['OX-098-21'], ['OX-098-34'], ['OX-105-02'], ['OX-112-03'], ['OX-131-07']])(
    'of %s stand to one scale, said once',
    name => expect(wordsOf(name).filter(words => /\b\d+:1\b/.test(words))).toHaveLength(1),
  )

  it.each([
    ['OX-098-21', ['limits after the operation', 'case left at the worst place', 'case must reach here: 0.250']],
    ['OX-105-02', ['layer at its thinnest, on bore from the plating on', 'layer must reach here: 0.056']],
  ])('of %s name every kind of mark where it can be read', (name, names) => {
    const words = wordsOf(name)
    for (const wanted of [...names, 'comes off: heavy, at least; thin, at most']) expect(words).toContain(wanted)
    expect(faultsOf(drawLadders(demoPlan(name), 510, measure), measure)).toEqual([])
  })

  it('keep the heads of their columns apart', () => {
    const { marks } = drawLadders(demoPlan('OX-098-21'), 510, measure)
    const heads = marks.flatMap(mark => (mark.kind === 'text' && /^(Ø mm|takes)/.test(mark.text) ? [mark] : []))
    for (const head of heads.filter(({ text }) => text.startsWith('takes')))
      for (const other of heads.filter(({ text, y }) => text === 'Ø mm' && y === head.y))
        expect(head.x - measure(head.text, head.size) - other.x).toBeGreaterThan(6)
  })
})
