import { describe, expect, it } from 'vitest'
import { cut, partOf, stateOf, step, tube } from './hand-made.ts'

/** Common practice, as in Kienzle's own worked cuts: 1165 N sharp, 1514 N worn, three tenths more. */
describe('the force of a worn edge', () => {
  it.each([
    ['31CrMoV9', 300],
    ['100Cr6', 210],
  ])('%s, which no textbook value stands over: three tenths more than that of a sharp one', (grade, hardness) => {
    const part = partOf({ material: { grade, written: grade, hardness } })
    const { forceBand } = step(cut(part, stateOf('rough-turn', tube(65, 40), tube(61, 40))).steps, 'rough seat')
    expect((forceBand?.most ?? 0) / (forceBand?.least ?? 1)).toBeCloseTo(1514 / 1165, 2)
  })
})
