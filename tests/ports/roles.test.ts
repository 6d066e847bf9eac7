import { describe, expect, it } from 'vitest'
import type { GasExchange } from '../../src/ports/gas-exchange.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import { type Asked, linerOf, milledAt, shopWith } from './liner.ts'

const ENGINE = { stroke: 54, rod: 100, pinOffset: 0, crownBelowTop: 0.4, speed: 4200 }
const EXHAUST: Asked = { name: 'exhaust', role: 'exhaust', at: 0, opens: 106, bottom: 54.4, width: 27 }
const AUX: Asked = { name: 'side exhaust', role: 'aux exhaust', at: 52, opens: 110, height: 5, width: 7 }
const MAIN: Asked = { name: 'main', role: 'transfer', at: 90, opens: 121, bottom: 54.4, width: 15, up: 10, back: 25 }
const BOOST: Asked = { name: 'boost', role: 'boost', at: 180, opens: 123, bottom: 54.4, width: 10, up: 40 }

function plan(ports: readonly Asked[], engine: object = {}) {
  const part = linerOf(ports, { engine: { ...ENGINE, ...engine } })
  const { gasExchange, findings } = planPorts(part, shopWith(), milledAt(47.8, 55.2))
  if (!gasExchange) throw new Error(findings.map(({ message }) => message).join('; '))
  return { gas: gasExchange, codes: findings.map(({ code }) => code), findings }
}
const area = ({ areas }: GasExchange, role: string) => areas.find(area => area.role === role)
const reference = ({ references }: GasExchange, what: RegExp) => references.filter(({ what: name }) => what.test(name))

describe('transfer and boost flow together', () => {
  const { gas } = plan([EXHAUST, MAIN, { ...MAIN, name: 'other', at: -90 }, BOOST])
  it('sums their time-areas and holds the sum against what is published for the transfers', () => {
    // The target is for all that feeds the cylinder: Jennings, Two-Stroke Tuner's Handbook, 1973.
    const [both] = gas.together
    const sum = (key: 'angleArea' | 'specificTimeArea' | 'meanAreaTimeArea') =>
      (area(gas, 'transfer')?.[key] ?? Number.NaN) + (area(gas, 'boost')?.[key] ?? Number.NaN)
    expect(both?.roles).toEqual(['transfer', 'boost'])
    for (const key of ['angleArea', 'specificTimeArea', 'meanAreaTimeArea'] as const) expect(both?.[key]).toBe(sum(key))
    const [held, ...more] = reference(gas, /^time-area by mean area, transfer/)
    expect([held?.what, held?.value, held?.from, held?.to, more]).toEqual([
      'time-area by mean area, transfer and boost',
      both?.meanAreaTimeArea,
      0.008,
      0.01,
      [],
    ])
  })
  it('needs no sum where one role has the flow to itself', () => {
    expect(plan([EXHAUST, MAIN, { ...MAIN, name: 'other', at: -90 }]).gas.together).toEqual([])
  })
})

describe('a bridged exhaust', () => {
  const { gas } = plan([{ ...EXHAUST, bridge: 2.6 }])
  it('is held against bridged ones by its whole width, and by its widest window', () => {
    // 27 / 48 = 0.5625. A window reaches from half the bar to the side edge at asin(13.5 / 24) = 34.23 degrees: its chord
    // is 2 · 24 · sin((34.23 - asin(1.3 / 24)) / 2) = 12.74 mm, 0.265 of the bore. Derived.
    const [whole, window] = reference(gas, /by bore/)
    expect([whole?.what, whole?.value, whole?.from, whole?.to]).toEqual([
      'width by bore with its bridge, exhaust',
      0.5625,
      0.5,
      0.9,
    ])
    expect(window?.what).toBe('widest window by bore, exhaust')
    const half = (Math.asin(13.5 / 24) - Math.asin(1.3 / 24)) / 2
    expect(window?.value).toBeCloseTo(Math.sin(half), 9)
  })
  it('is judged as one: 50 % a window and 90 % in all', () => {
    // Memory: Bell. 48 mm · 0.9 = 43.2 mm; one window of a bar of 2.6 mm over 0.5 of the bore.
    const wide = plan([{ ...EXHAUST, width: 43.1, bridge: 6 }])
    expect(wide.codes).not.toContain('ports/exhaust-width')
    const wider = plan([{ ...EXHAUST, width: 43.3, bridge: 6 }]).findings.filter(
      ({ code }) => code === 'ports/exhaust-width',
    )
    expect(wider.map(({ message }) => message)).toEqual([expect.stringMatching(/with its bridge it is 90\.2 %/)])
    expect(plan([{ ...EXHAUST, width: 30, bridge: 2.6 }]).codes).not.toContain('ports/exhaust-width')
  })
})

describe('auxiliary exhausts', () => {
  const alone = plan([EXHAUST, MAIN, { ...MAIN, name: 'other', at: -90 }])
  const both = plan([EXHAUST, AUX, { ...AUX, name: 'other side', at: -52 }, MAIN, { ...MAIN, name: 'other', at: -90 }])
  it('are not asked to reach the crown at bottom dead centre, nor for an exhaust’s width or corners', () => {
    const named = both.findings.filter(({ message }) => message.includes('side'))
    expect(named.map(({ code }) => code)).not.toContain('ports/floor-at-bottom')
    expect(reference(both.gas, /by bore/).map(({ what }) => what)).toEqual(['width by bore, exhaust'])
    expect(plan([{ ...AUX, role: 'exhaust' }]).codes).toContain('ports/floor-at-bottom')
    const ringed = plan([EXHAUST, { ...AUX, corner: { on: 'bore', radius: 1.2 } }], { rings: { pegs: [] } })
    expect(ringed.findings.filter(({ code }) => code === 'ports/ring-corner').map(({ message }) => message)).toEqual([
      expect.stringMatching(/^exhaust: /),
    ])
  })
  it('add to the blowdown what they leave open before the transfers', () => {
    // Blowdown angle stays that of the exhaust; the area grows by the two side windows from 110 to 121 degrees.
    expect(both.gas.blowdown?.angle).toBe(alone.gas.blowdown?.angle)
    const grown = (both.gas.blowdown?.angleArea ?? 0) - (alone.gas.blowdown?.angleArea ?? 0)
    expect(grown).toBeGreaterThan(0)
    const later = plan([EXHAUST, { ...AUX, opens: 121.5 }, MAIN, { ...MAIN, name: 'other', at: -90 }])
    expect(later.gas.blowdown?.angleArea).toBe(alone.gas.blowdown?.angleArea)
    expect(later.codes).toContain('ports/aux-exhaust-timing')
  })
  it('trap the charge where the last of the exhausts closes', () => {
    const first = plan([EXHAUST, { ...AUX, opens: 104 }])
    expect(first.gas.trappedVolume).toBeLessThan(alone.gas.trappedVolume ?? 0)
    expect(first.codes).toContain('ports/aux-exhaust-timing')
  })
})

describe('a decompressor', () => {
  it('is shut while the engine runs: no area, no blowdown, no rule of the others', () => {
    const small: Asked = { name: 'decompressor', role: 'decompressor', at: 130, top: 30, height: 5, width: 5.2 }
    const { gas, codes } = plan([EXHAUST, MAIN, { ...MAIN, name: 'other', at: -90 }, small])
    const without = plan([EXHAUST, MAIN, { ...MAIN, name: 'other', at: -90 }])
    expect(gas.areas.map(({ role }) => role)).toEqual(['exhaust', 'transfer'])
    expect(gas.blowdown).toEqual(without.gas.blowdown)
    expect(codes).toEqual(without.codes)
  })
})

describe('rows of ports above one another', () => {
  // Four windows of 67.6 degrees take 75.1 % of a row; two such rows do not take half as much again.
  const row = (top: number, arc: number): readonly Asked[] => [0, 90, 180, -90].map(at => ({ at, top, height: 8, arc }))
  const share = (ports: readonly Asked[]) =>
    planPorts(linerOf(ports), shopWith(), milledAt(47.8, 55.2)).findings.filter(
      ({ code }) => code === 'ports/porting-share',
    )
  it('are counted row by row', () => {
    expect(share([...row(20, 67.4), ...row(40, 67.4)])).toEqual([])
    expect(share([...row(20, 50), ...row(40, 67.6)]).map(({ message }) => message)).toEqual([
      expect.stringMatching(/75 % of the circumference 40\.00 mm below/),
    ])
  })
})
