import { describe, expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { demo, desk } from './fake-world.ts'

const files = {
  'liner.yaml': demo('OX-098-21.yaml'),
  'pin.yaml': demo('OX-098-34.yaml'),
  'shop.yaml': demo('shop.yaml'),
}

it('route answers one question at a time, and none on an operation that it does not have', async () => {
  const unknown = desk(files)
  expect(await run(['route', 'liner.yaml', '--why', '85'], unknown)).toBe(2)
  expect(unknown.complained()).toContain('there is no operation 85: 10 Saw blanks')
  const both = desk(files)
  expect(await run(['route', 'liner.yaml', '--why', '80', '--alternatives', '2'], both)).toBe(2)
  expect(both.complained()).toContain('give one of them')
})

type Other = {
  readonly givesUp?: string
  readonly operations: readonly { readonly purpose: string }[]
  readonly figures: { readonly visits: number; readonly each: number; readonly errors: readonly unknown[] }
}

describe('route --alternatives', () => {
  it('plans the other orders and what a rule given up would make, those that keep every rule first', async () => {
    const world = desk(files)
    expect(await run(['route', 'liner.yaml', '--alternatives', '3', '--json'], world)).toBe(0)
    const { planned, alternatives }: { planned: Other; alternatives: readonly Other[] } = JSON.parse(world.printed())
    expect(alternatives.map(({ givesUp }) => givesUp)).toEqual([
      undefined,
      'stress-relieved-before-nitriding',
      'ground-before-honing',
    ])
    const purposes = ({ operations }: Other) => operations.map(({ purpose }) => purpose)
    const [otherOrder, unrelieved, honedAlone] = alternatives
    expect(otherOrder && purposes(otherOrder).toSorted()).toEqual(purposes(planned).toSorted())
    expect(otherOrder && purposes(otherOrder)).not.toEqual(purposes(planned))
    expect(unrelieved && purposes(unrelieved)).not.toContain('stress-relieve')
    // The relief is one visit to a firm.
    expect(unrelieved?.figures.visits).toBe(planned.figures.visits - 1)
    expect(honedAlone && purposes(honedAlone)).toContain('hone-bore')
    expect(honedAlone && purposes(honedAlone)).not.toContain('grind-bore')
    for (const { figures } of alternatives) expect(figures.errors).toEqual([])
  })

  it('puts stock, case and times side by side, and says so where there is nothing else', async () => {
    const liner = desk(files)
    await run(['route', 'liner.yaml', '--alternatives', '2'], liner)
    for (const row of ['set-ups', 'visits to firms', 'case to order, mm', 'bore: stock on diameter, mm', 'errors'])
      expect(liner.printed()).toMatch(new RegExp(`^${row} .*\\d`, 'm'))
    expect(liner.printed()).toMatch(/without Stress relieve: what is left of the rolling/)
    const pin = desk(files)
    await run(['route', 'pin.yaml', '--alternatives', '2'], pin)
    expect(pin.printed()).toContain('The rules allow no other order')
  })
})
