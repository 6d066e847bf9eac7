import { describe, expect, it } from 'vitest'
import { known, told, worked } from '../../src/known.ts'
import { openNotebook, type Working } from '../../src/working.ts'
import { everyFormula } from '../handbook/every-formula.ts'
import { demoPlan } from '../sheets/demo-packet.ts'

const FORMULAS = new Map(
  everyFormula().map(
    ({ where, formula }) => [`${formula.symbol} = ${formula.expression}`, { where, formula }] as const,
  ),
)

/** Numbers in the formula that say nothing of where they come from. */
function untold({ symbol, formula: expression, inputs = [] }: Working): readonly string[] {
  const found = FORMULAS.get(`${symbol} = ${expression}`)
  if (!found) return []
  const have = new Set(inputs.map(input => input.symbol))
  return Object.keys(found.formula.inputs)
    .filter(name => !have.has(name))
    .map(name => `${found.where}: ${symbol} of ${name}`)
}

describe('where the numbers of a working come from', () => {
  it.each(['OX-098-21', 'OX-098-30', 'OX-098-31', 'OX-098-34', 'OX-105-02', 'OX-112-03', 'OX-131-07'])(
    'is told of each, in the plan of %s',
    number => {
      const { workings } = demoPlan(number)
      expect([...new Set(workings.flatMap(untold))]).toEqual([])
      const inputs = workings.flatMap(({ inputs = [] }) => inputs)
      expect(inputs.length).toBeGreaterThan(workings.length)
      for (const { from, source } of inputs) expect(source, from).not.toBe('')
    },
  )

  it('is the formula that gave the figure under the same symbol, and only for that very figure', () => {
    const notebook = openNotebook()
    const formula = (symbol: string) => {
      const found = [...FORMULAS.values()].find(one => one.formula.symbol === symbol)
      if (!found) throw new Error(`no formula gives ${symbol}`)
      return found.formula
    }
    const R = notebook.use(formula('R'), { S: known(54, 'mm', worked('drawn')), L: 100, e: 0 })
    notebook.use(formula('theta_B'), {
      ...told({ from: 'part', source: 'part file: engine/rod' }, { L: 100 }),
      R,
      e: 0,
    })
    const [first, second] = notebook.workings
    expect(first?.inputs?.map(({ symbol }) => symbol)).toEqual(['S'])
    expect(second?.inputs).toEqual([
      { symbol: 'L', value: 100, unit: 'mm', from: 'part', source: 'part file: engine/rod' },
      { symbol: 'R', value: R, unit: 'mm', from: 'formula', source: expect.stringContaining('throw of the crank') },
    ])
  })
})
