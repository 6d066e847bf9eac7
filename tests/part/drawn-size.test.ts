import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { generalTolerance } from '../../src/handbook/general-tolerance.ts'
import { limitsOfFit } from '../../src/handbook/iso-286.ts'
import { readSize, type SizeContext } from '../../src/part/drawn-size.ts'

const context = (of: SizeContext['of'] = 'length'): SizeContext => ({ name: 'size', of, general: 'm' })
const sizeOf = (written: number | string, of?: SizeContext['of']) => {
  const read = readSize(written, context(of))
  if ('fault' in read) throw new Error(read.fault.message)
  return read.value
}
const codeOf = (written: number | string, of?: SizeContext['of']) => {
  const read = readSize(written, context(of))
  return 'fault' in read ? read.fault.code : 'none'
}

describe('a date', () => {
  it.each(['2026-11-25', '2000-01-01'])('%s is no size with two deviations', text => {
    expect(codeOf(text)).toBe('input/unreadable')
  })
})

describe('limits worked out by hand from the tables of ISO 286-1:1988 and 286-2:1988', () => {
  it.each([
    // IT6 16 µm over 30 up to 50, H from 0.
    ['48 H6', 'hole', 48, 48.016],
    // g −10, IT6 19 µm over 50 up to 80.
    ['55 g6', 'shaft', 54.971, 54.99],
    ['56 h6', 'shaft', 55.981, 56],
    ['62 n6', 'shaft', 62.02, 62.039],
    ['20 JS7', 'hole', 19.9895, 20.0105],
    // A nominal on a boundary belongs to the lower range: IT7 is 21 µm, and 25 µm just above.
    ['30 H7', 'hole', 30, 30.021],
    ['30.001 H7', 'hole', 30.001, 30.026],
    ['40 K7', 'hole', 39.982, 40.007],
    ['12 P7', 'hole', 11.971, 11.989],
  ] as const)('%s', (written, of, lower, upper) => {
    expect(sizeOf(written, of)).toMatchObject({ lower, upper, written })
  })
})

describe('sizes as on a drawing', () => {
  it.each([
    ['92 ±0.05', 91.95, 92.05],
    ['92 +-0.05', 91.95, 92.05],
    ['92 +/- 0.05', 91.95, 92.05],
    ['12 +0.1/-0', 12, 12.1],
    ['12 +0.1 -0.0', 12, 12.1],
    ['12 0/-0.1', 11.9, 12],
    ['12 -0.1/-0.2', 11.8, 11.9],
    ['12 −0.2/−0.1', 11.8, 11.9],
    ['⌀12 +0.2/+0.1', 12.1, 12.2],
    ['Ø 12 ±.1', 11.9, 12.1],
    ['12±0.1 mm', 11.9, 12.1],
    ['12  +0.10  /  0', 12, 12.1],
  ])('%s', (written, lower, upper) => {
    expect(sizeOf(written)).toMatchObject({ nominal: Number.parseFloat(written.replace(/^\D+/, '')), lower, upper })
  })

  it('a bare size takes the general tolerance: 80 is ±0.3 in class m of ISO 2768-1:1989', () => {
    expect(sizeOf(80)).toMatchObject({ nominal: 80, lower: 79.7, upper: 80.3, written: '80' })
  })

  // ISO 80000-3: 1 in = 25.4 mm exactly.
  it.each(['1.890 in ±0.001', '1.890 inch ±0.001', '1.890" ±0.001', '1.890 ±0.001 in', '1.890 ±0.001 inch'])(
    '%s',
    written => {
      expect(sizeOf(written)).toMatchObject({ nominal: 48.006, lower: 47.9806, upper: 48.0314 })
    },
  )

  it.each([
    ['0.5 deg', 'input/wrong-unit'],
    ['0.5°', 'input/wrong-unit'],
    ['12,5 ±0.1', 'input/decimal-comma'],
    ['12 +0.1', 'input/unreadable'],
    ['12 0.1 0.2', 'input/unreadable'],
    ['12 ±0', 'input/no-tolerance'],
    ['0.4', 'input/no-tolerance'],
    ['0.4 ±0.5', 'input/out-of-range'],
    ['0', 'input/no-tolerance'],
    ['12 ±0.1 in mm', 'input/unreadable'],
    ['12 mm ±0.1 in', 'input/wrong-unit'],
    ['', 'input/unreadable'],
    ['H7', 'input/unreadable'],
    ['9'.repeat(400), 'input/not-finite'],
    [`48 +${'9'.repeat(400)}/0`, 'input/not-finite'],
    ['12 q7', 'input/fit'],
    ['12 H70', 'input/fit'],
  ])('"%s" is refused: %s', (written, code) => {
    expect(codeOf(written)).toBe(code)
  })

  it('a bore takes no shaft and an outside no hole, a length takes either', () => {
    expect([codeOf('48 h6', 'hole'), codeOf('48 H6', 'shaft'), codeOf('48 h6'), codeOf('48 H6')]).toEqual([
      'input/fit',
      'input/fit',
      'none',
      'none',
    ])
  })
})

const nominals = fc.integer({ min: 1000, max: 250_000 }).map(thousandths => thousandths / 1000)
const CLASSES = ['H6', 'H7', 'G6', 'F8', 'JS7', 'N7', 'P6', 'K7', 'h6', 'g6', 'f7', 'js9', 'k6', 'm5', 'n6', 'p6']

describe('what always holds', () => {
  it('a written fit reads to the limits of ISO 286, nominal and deviation added up', () => {
    fc.assert(
      fc.property(nominals, fc.constantFrom(...CLASSES), fc.boolean(), (nominal, fit, spaced) => {
        const limits = limitsOfFit(nominal, fit)
        if (!limits.ok) throw new Error(limits.reason)
        const read = sizeOf(`${nominal}${spaced ? ' ' : ''}${fit}`)
        expect(read.nominal).toBe(nominal)
        expect(read.upper).toBeCloseTo(nominal + limits.upper, 9)
        expect(read.lower).toBeCloseTo(nominal + limits.lower, 9)
      }),
    )
  })

  it('written deviations come back, in either order and with either sign for plus-or-minus', () => {
    const deviations = fc.integer({ min: -900, max: 900 }).map(thousandths => thousandths / 1000)
    const signed = (value: number) => (value < 0 ? String(value) : `+${value}`)
    fc.assert(
      fc.property(nominals, deviations, deviations, (nominal, one, other) => {
        fc.pre(one !== other)
        const read = sizeOf(`${nominal} ${signed(one)}/${signed(other)}`)
        expect(read.upper).toBeCloseTo(nominal + Math.max(one, other), 9)
        expect(read.lower).toBeCloseTo(nominal + Math.min(one, other), 9)
        expect(sizeOf(`${nominal} ${signed(other)} ${signed(one)}`)).toEqual({ ...read, written: expect.any(String) })
      }),
    )
  })

  it('a bare size lies evenly in its general tolerance, ISO 2768-1', () => {
    fc.assert(
      fc.property(nominals, nominal => {
        const either = generalTolerance(nominal, 'm') ?? Number.NaN
        const read = sizeOf(nominal)
        expect(read.upper - nominal).toBeCloseTo(either, 9)
        expect(nominal - read.lower).toBeCloseTo(either, 9)
      }),
    )
  })

  it('inches read as 25.4 times the millimetres, tolerance and all', () => {
    fc.assert(
      fc.property(nominals, nominal => {
        const inch = sizeOf(`${nominal / 25.4} ±0.002 in`)
        expect(inch.nominal).toBeCloseTo(nominal, 8)
        expect(inch.upper - inch.nominal).toBeCloseTo(0.0508, 8)
        expect(sizeOf(`${nominal / 25.4} in ±0.002`)).toEqual({ ...inch, written: expect.any(String) })
      }),
    )
  })

  it('no text is worse than a fault', () => {
    const texts = fc.oneof(fc.string(), fc.stringMatching(/^[0-9.+\-±/ HhgmzinØ"°]{0,14}$/))
    fc.assert(
      fc.property(texts, text => {
        const read = readSize(text, context())
        if ('fault' in read) expect(read.fault.message).not.toMatch(/NaN|undefined|Infinity/)
        else expect(read.value.upper).toBeGreaterThan(read.value.lower)
      }),
    )
  })
})
