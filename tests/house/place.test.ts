import { describe, expect, it } from 'vitest'
import { placeKind, writtenAs } from '../../src/place.ts'
import { demoPlan } from '../sheets/demo-packet.ts'

const NAMES = { bore: [{ name: 'recess' }, { name: 'bore' }], ports: [{ name: 'exhaust' }] }

describe('a name of the part', () => {
  it.each([
    ['recess', 'bore'],
    ['exhaust', 'port'],
    ['seat', 'outside'],
    ['outside', 'outside'],
    ['top', 'face'],
    ['bottom', 'face'],
    ['length', 'face'],
  ] as const)('%s stands for the %s', (name, kind) => {
    expect(placeKind(NAMES, name)).toBe(kind)
  })
})

describe('two limits', () => {
  it('have the smaller in front where cutting enlarges what is measured', () => {
    expect([writtenAs('bore'), writtenAs('port', 'width'), writtenAs('outside', 'depth')]).toEqual([
      'hole',
      'hole',
      'hole',
    ])
    expect([writtenAs('outside'), writtenAs('face', 'length')]).toEqual(['shaft', 'shaft'])
  })

  it('stand the same way on drawing, sheet, check and order, since all read the plan', () => {
    const plan = demoPlan()
    const bores = new Set(plan.ladders.filter(({ kind }) => kind === 'bore').map(({ surface }) => surface))
    const sizes = plan.operations.flatMap(({ sizes }) => sizes)
    for (const { feature, measure, written } of sizes)
      if (measure === 'diameter') expect(written, feature).toBe(bores.has(feature) ? 'hole' : 'shaft')
    const same = plan.inspection.characteristics.flatMap(({ operation, feature, lower, upper, written }) =>
      (plan.operations.find(({ number }) => number === operation)?.sizes ?? [])
        .filter(size => size.feature === feature && size.lower === lower && size.upper === upper)
        .map(size => [size.written, written]),
    )
    expect(same.length).toBeGreaterThan(5)
    for (const [made, checked] of same) expect(made).toBe(checked)
  })
})
