import { describe, expect, it } from 'vitest'
import { partFrom } from '../route/part-text.ts'
import { planned } from './planned.ts'

/** Invented. Bore 54 in 60, both sides treated. */
const liner = (size: string, extra = '') => `part: {number: OX-098-96, title: Liner, revision: A, kind: liner}
material: {grade: 31CrMoV9, hardness: 340 HV, temper: 640}
body:
  length: 80 ±0.2
  outside: {size: ${size}, Ra: 0.4, name: seat}
  bore: {size: 54 H6, Ra: 0.8, cylindricity: 0.006}
hardening: {process: gas nitriding, depth: min 0.2${extra}}
`

describe('an outside that is finished before the case of the bore is ground away', () => {
  const plan = planned(partFrom(liner('60 h6')))
  const seat = plan.entries.filter(({ surface }) => surface === 'seat').at(-1)
  const bore = plan.entries.filter(({ surface }) => surface === 'bore')

  // Derived: compression that held the wall out is gone: it moves in, more at the ends; finite elements have -1.19 and -3.83 µm
  // for a tube 54/60 of 42CrMo4 with 0.1 off 0.3 mm of case at 276 MPa.
  it('gets smaller, most at its ends, by a few micrometres with a range', () => {
    expect(bore[0]?.operation).toBeGreaterThan(seat?.operation ?? Number.POSITIVE_INFINITY)
    const { middle = 0, ends = 0, taper } = seat?.afterwards ?? {}
    expect(middle).toBeLessThan(0)
    expect(ends).toBeLessThan(middle)
    expect(1000 * ends).toBeGreaterThan(-8)
    expect(taper?.least).toBeLessThan(taper?.nominal ?? 0)
    expect(taper?.most).toBeGreaterThan(taper?.nominal ?? 9)
    expect(bore.every(({ afterwards }) => afterwards === undefined)).toBe(true)
  })

  it('is warned of where that is half of its tolerance, with an order of finishing; not where it is little', () => {
    const codes = (size: string) =>
      planned(partFrom(liner(size))).findings.filter(({ code }) => code === 'stock/release')
    const [close] = codes('60 h4')
    expect(close?.message).toMatch(/µm on diameter/)
    expect(close?.hint).toContain('bore honed last')
    expect(codes('60 h8')).toEqual([])
  })

  // Derived: what its ends are bent by reaches its middle, and takes from what the ends move.
  it('moves otherwise in a short tube, whose ends reach one another', () => {
    const short = planned(partFrom(liner('60 h6').replace('80 ±0.2', '20 ±0.2')))
    const last = (entries: typeof plan.entries) =>
      entries.filter(({ surface }) => surface === 'seat').at(-1)?.afterwards
    const [long, near] = [last(plan.entries), last(short.entries)]
    expect(near?.middle).toBeGreaterThan(long?.middle ?? 0)
    expect(Math.abs(near?.ends ?? 0)).toBeGreaterThan(0)
    expect(Math.abs(near?.ends ?? 9)).toBeLessThan(Math.abs(long?.ends ?? 0))
  })

  it('moves by nothing where one side is masked', () => {
    const masked = planned(partFrom(liner('60 h6', ', masked: [bore]')))
    expect(masked.entries.every(({ afterwards }) => afterwards === undefined)).toBe(true)
  })
})
