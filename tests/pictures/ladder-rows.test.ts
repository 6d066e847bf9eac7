import { describe, expect, it } from 'vitest'
import { ladderRows } from '../../src/pictures/ladder-rows.ts'
import { SAMPLE_PLAN } from './sample-plan.ts'

const { ladders } = SAMPLE_PLAN
const rowsOf = (surface: string) => {
  const ladder = ladders.find(ladder => ladder.surface === surface)
  return ladder ? ladderRows(ladder) : []
}

describe('the rows of a ladder', () => {
  it.each(['seat', 'bore'])('step into the metal of the %s as it is cut', surface => {
    const soft = rowsOf(surface).filter(({ operation }) => operation !== 90)
    const middles = soft.map(({ inner, outer }) => (inner + outer) / 2)
    expect(middles).toEqual(middles.toSorted((a, b) => b - a))
  })

  it('count on one side: half of what the diameters differ by', () => {
    const turned = rowsOf('seat').find(({ operation }) => operation === 40)
    // Rough turned 56.90 to 57.10, finish turned 55.17 to 55.22.
    expect(turned?.taken?.written).toBe(`${((56.9 - 55.22) / 2).toFixed(3)} to ${((57.1 - 55.17) / 2).toFixed(3)}`)
    const bored = rowsOf('bore').find(({ operation }) => operation === 40)
    expect(bored?.taken?.written).toBe(`${((47.78 - 46.1) / 2).toFixed(3)} to ${((47.83 - 45.9) / 2).toFixed(3)}`)
  })

  it('take the plan’s own figures, growth and worst place in them, where it finishes a hardened surface', () => {
    expect(rowsOf('seat').at(-1)?.taken?.written).toBe('0.074 to 0.155')
  })

  it('lose case by what is taken at most, over all finishing operations', () => {
    const depths = rowsOf('bore').map(({ operation, depth }) => [operation, depth?.toFixed(3)])
    expect(depths).toEqual([
      [20, undefined],
      [40, undefined],
      [90, '0.400'],
      [120, (0.4 - 0.13).toFixed(3)],
      [130, (0.4 - 0.13 - 0.028).toFixed(3)],
    ])
  })
})
