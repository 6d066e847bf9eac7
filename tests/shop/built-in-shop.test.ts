import { describe, expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { GaugeKind } from '../../src/shop/shop.ts'
import { toolsOf } from '../../src/shop/tool.ts'

const { machines, tools, gauges, firms, habits } = BUILT_IN_SHOP

describe('the built-in shop', () => {
  it('can make a nitrided liner: every process is done by a machine or a firm', () => {
    const done = new Set([...machines, ...firms].flatMap(({ processes }) => processes))
    for (const process of [
      'saw',
      'turn',
      'drill',
      'mill',
      'deburr',
      'mark',
      'stress-relieve',
      'nitride',
      'grind',
      'hone',
      'inspect',
    ] as const) {
      expect(done).toContain(process)
    }
  })

  it('is a small works: bores are ground and honed, and roundness measured, elsewhere; common practice, no source', () => {
    expect(machines.map(({ workCentre }) => workCentre)).toEqual([
      'saw',
      'lathe',
      'mill',
      'cylindrical grinder',
      'bench',
      'inspection bench',
    ])
    const own = new Set(machines.flatMap(({ processes }) => processes))
    for (const process of ['hone', 'lap', 'nitride', 'plate', 'crack-test'] as const) expect(own).not.toContain(process)
    expect(gauges.map(({ name }) => name).join()).not.toContain('roundness')
    const away = firms.find(({ processes }) => processes.includes('grind'))
    expect(away?.processes).toEqual(['grind', 'hone', 'lap'])
  })

  it('names every machine, tool and gauge once', () => {
    for (const names of [machines.map(m => m.workCentre), tools.map(t => t.name), gauges.map(g => g.name)]) {
      expect(new Set(names).size).toBe(names.length)
    }
  })

  it('has a gauge of every kind', () => {
    const kinds: readonly GaugeKind[] = [
      'outside',
      'bore',
      'depth',
      'length',
      'form',
      'roughness',
      'hardness',
      'angle',
      'contour',
      'groove',
      'edge',
      'visual',
    ]
    expect(new Set(gauges.map(({ kind }) => kind))).toEqual(new Set(kinds))
  })

  // ASME B89.7.3.1-2001, 4:1 rule: expanded uncertainty at most an eighth of the tolerance. IT6 at 48 mm is 16 µm, IT6 at 55 mm 19 µm.
  it('measures a 48 H6 bore and a 55 g6 outside at four to one', () => {
    const best = (kind: GaugeKind, size: number) =>
      Math.min(...gauges.filter(g => g.kind === kind && g.from <= size && size <= g.to).map(g => g.uncertainty))
    expect(best('bore', 48)).toBeLessThanOrEqual(0.016 / 8)
    expect(best('outside', 55)).toBeLessThanOrEqual(0.019 / 8)
  })

  // Derived: v = π·d·n. 35 m/s is the usual marked speed of a vitrified wheel of this size; common practice, no source.
  it('runs no wheel over 35 m/s outside or 40 m/s inside at the spindle limit', () => {
    const fastest = (workCentre: string, diameter = 0) =>
      (Math.PI * diameter * (machines.find(m => m.workCentre === workCentre)?.speedLimit ?? 0)) / 60_000
    const widest = (kind: 'grinding wheel' | 'internal wheel') =>
      Math.max(...toolsOf({ tools }, kind).map(({ diameter }) => diameter))
    expect(fastest('cylindrical grinder', widest('grinding wheel'))).toBeLessThanOrEqual(35)
    expect(fastest('internal grinder', widest('internal wheel'))).toBeLessThanOrEqual(40)
  })

  // Common practice, no source: steel boring bars stand out at most four diameters, carbide ones six.
  it('has no boring bar that hangs out too far', () => {
    for (const { name, reach, diameter, material } of toolsOf({ tools }, 'boring bar')) {
      expect(reach / diameter, name).toBeLessThanOrEqual(material === 'steel' ? 4 : 6)
    }
  })

  it('has an entry drill for every end mill up to 4 mm, wider than the cutter by 0.1 to 0.4 mm', () => {
    const drills = toolsOf({ tools }, 'drill').map(({ diameter }) => diameter)
    for (const { diameter } of toolsOf({ tools }, 'end mill').filter(
      mill => mill.diameter >= 2 && mill.diameter <= 4,
    )) {
      expect(
        drills.some(drill => drill - diameter > 0.1 && drill - diameter < 0.4),
        `${diameter}`,
      ).toBe(true)
    }
  })

  it('yields are shares of one', () => {
    for (const share of Object.values(habits.yields)) expect(share > 0 && share <= 1).toBe(true)
  })
})
