import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readQuantity } from '../../src/part/quantity.ts'

const reading = (written: number | string, kind: Parameters<typeof readQuantity>[1]) => {
  const read = readQuantity(written, kind, 'it')
  return 'value' in read ? read.value : read.fault.code
}

describe('a number with its unit', () => {
  it.each([
    ['1.890 in', 'length', 48.006],
    ['1.89"', 'length', 48.006],
    ['12 µm', 'length', 0.012],
    ['-0.4', 'length', -0.4],
    ['15°', 'angle', 15],
    ['32 µin', 'roughness', 0.8128],
    ['4200 rpm', 'speed', 4200],
    ['2 weeks', 'days', 14],
    ['1 h', 'minutes', 60],
    ['750 W', 'power', 0.75],
    // The cubic inch is 16.387064 cm³ exactly: the inch is 25.4 mm (ISO 80000-3).
    ['0.7 in³', 'volume', 11.4709448],
    ['23 ml', 'volume', 23],
    ['950 mm³', 'volume', 0.95],
    ['95 %', 'ratio', 0.95],
    ['0.5 deg', 'length', 'input/wrong-unit'],
    ['3 mm', 'angle', 'input/wrong-unit'],
    ['54 cm', 'length', 'input/wrong-unit'],
    ['1,5', 'length', 'input/decimal-comma'],
    ['1,5 mm', 'length', 'input/decimal-comma'],
    ['long', 'length', 'input/unreadable'],
    ['constructor', 'length', 'input/unreadable'],
    ['1 constructor', 'length', 'input/wrong-unit'],
  ] as const)('%s as %s', (written, kind, wanted) => {
    expect(reading(written, kind)).toBe(wanted)
  })

  // ISO 80000-3: 1 in = 25.4 mm exactly.
  it('an inch is 25.4 mm, whatever the figure', () => {
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 100_000 }), tenThousandths => {
        expect(reading(`${tenThousandths / 10_000} in`, 'length')).toBeCloseTo((tenThousandths * 25.4) / 10_000, 9)
      }),
    )
  })
})
