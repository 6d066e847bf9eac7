import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, expectTypeOf, it } from 'vitest'
import { type Formula, formula } from '../src/formula.ts'
import { lobing } from '../src/handbook/chuck-distortion.ts'
import { endMillDeflection } from '../src/handbook/end-mill-strength.ts'
import { vickersFromRockwell } from '../src/handbook/hardness-conversion.ts'
import { slipForce } from '../src/handbook/holding.ts'
import { cuttingPower } from '../src/handbook/kienzle.ts'
import { nitridingTime } from '../src/handbook/nitriding-depth.ts'
import { turningTime } from '../src/handbook/turning.ts'
import { known, worked } from '../src/known.ts'
import {
  cubicCentimetres,
  cubicMillimetres,
  kilowatts,
  type Micrometre,
  type Millimetre,
  type Minute,
  metres,
  micrometres,
  millimetres,
  millimetresPerMinute,
  type Newton,
  type Quantity,
  watts,
} from '../src/units.ts'
import { openNotebook } from '../src/working.ts'

const CUTTER = { F: 10, E: 580_000, l1: 4, d1: 1.6, L: 20, d2: 4 }
const JAW = { S: 2, M: 1.25, T: 0, mu: 0.15, mu_a: 0.15, d_g: 56 }
const TURN = { L: 85, La: 2, Lo: 2, i: 1, f: 0.25, n: 783.5 }

describe('the unit of a formula rides on its result', () => {
  const { use } = openNotebook()

  it('a length is a length', () => {
    expectTypeOf(use(lobing, { delta_L: 0.01, delta_M: 0.01, k: 1 })).toEqualTypeOf<Millimetre>()
    expectTypeOf(use(endMillDeflection, CUTTER)).toEqualTypeOf<Micrometre>()
    expectTypeOf(turningTime.value(TURN)).toEqualTypeOf<Minute>()
  })

  it('no other quantity passes for one: the compiler says so, in use and in value', () => {
    // @ts-expect-error µm
    const bend: Millimetre = use(endMillDeflection, CUTTER)
    // @ts-expect-error µm
    const bent: Millimetre = endMillDeflection.value(CUTTER)
    // @ts-expect-error N
    const force: Millimetre = use(slipForce, JAW)
    // @ts-expect-error kW
    const power: Millimetre = use(cuttingPower, { Fc: 1165, vc: 160 })
    // @ts-expect-error HV
    const hardness: Millimetre = use(vickersFromRockwell, { HRC: 60 })
    // @ts-expect-error min
    const time: Millimetre = use(turningTime, TURN)
    // @ts-expect-error h
    const cycle: Millimetre = use(nitridingTime, { N: 0.3, K: 0.05 })
    // @ts-expect-error h is not min
    const minutes: Minute = use(nitridingTime, { N: 0.3, K: 0.05 })
    for (const figure of [bend, bent, force, power, hardness, time, cycle, minutes]) expect(figure).toBeGreaterThan(0)
  })

  it('no literal of another unit is one', () => {
    expectTypeOf<Quantity<'s'>>().not.toExtend<Millimetre>()
    expectTypeOf<Quantity<'K'>>().not.toExtend<Millimetre>()
    expectTypeOf<Quantity<'HRC'>>().not.toExtend<Millimetre>()
    expectTypeOf<Quantity<'MPa'>>().not.toExtend<Millimetre>()
    expectTypeOf<Quantity<'N'>>().not.toExtend<Millimetre>()
    expectTypeOf<Quantity<''>>().not.toExtend<Millimetre>()
    expectTypeOf<number>().toExtend<Millimetre>()
  })

  it('what a formula is given is checked by its unit too, and a plain number passes', () => {
    const small: Micrometre = 8
    const held: Newton = 600
    // @ts-expect-error µm for mm
    lobing.value({ delta_L: small, delta_M: 0.01, k: 1 })
    // @ts-expect-error N for mm
    use(lobing, { delta_L: held, delta_M: 0.01, k: 1 })
    // @ts-expect-error a figure that carries where it comes from, in µm for mm
    expect(() => use(lobing, { delta_L: known(8, 'µm', worked('test')), delta_M: 0.01, k: 1 })).toThrow('µm')
    expect(use(lobing, { delta_L: millimetres(small), delta_M: 0.01, k: 1 })).toBeCloseTo(0.018, 12)
  })

  it('a unit that is not in the list makes no formula', () => {
    const text = { symbol: 'x', meaning: 'x', expression: 'a', source: 'derived' }
    const example = { given: { a: 1 }, gives: 1 }
    const value = ({ a }: { a: number }) => a
    // @ts-expect-error furlongs are no unit here
    formula({ ...text, unit: 'furlong', inputs: { a: { meaning: 'a', unit: 'mm' } }, example, value })
    // @ts-expect-error nor for what goes in
    formula({ ...text, unit: 'mm', inputs: { a: { meaning: 'a', unit: 'furlong' } }, example, value })
    const doubled = formula({ ...text, unit: 'N', inputs: { a: { meaning: 'a', unit: 'mm' } }, example, value })
    expectTypeOf(doubled).toEqualTypeOf<Formula<{ a: 'mm' }, 'N'>>()
  })
})

describe('from one unit to another', () => {
  // Derived: SI prefixes (ISO 80000-1).
  it('goes there and back', () => {
    expect(micrometres(0.008)).toBe(8)
    expect(millimetres(micrometres(0.25))).toBe(0.25)
    expect(metres(1500)).toBe(1.5)
    expect(cubicCentimetres(cubicMillimetres(12.5))).toBe(12.5)
    expect(kilowatts(watts(3.7))).toBe(3.7)
    expect(millimetresPerMinute(20)).toBe(20_000)
  })

  it('goes by a name: outside formulas no bare thousand stands beside a multiplication', () => {
    // A program's text is written in thousandths, and its habits reckon a speed of their own.
    const apart = new Set(['units.ts', 'nc/nc-text.ts', 'nc/cutting-data.ts'])
    const found = readdirSync('src', { recursive: true })
      .map(String)
      .filter(file => file.endsWith('.ts') && !file.startsWith('handbook/') && !apart.has(file))
      .flatMap(file =>
        readFileSync(`src/${file}`, 'utf8')
          .split('\n')
          .filter(line => /\b1_?000\b \*|[*/] 1_?000\b|\b60_?000\b/.test(line) && !line.trimStart().startsWith('*'))
          .map(line => `${file}: ${line.trim()}`),
      )
    expect(found).toEqual([])
  })
})
