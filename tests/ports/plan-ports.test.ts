import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { toMachine } from '../../src/machine-frame.ts'
import { direction } from '../../src/ports/fixture-setting.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import type { PlannedPort, PortWindow } from '../../src/ports/port.ts'
import { type Asked, FIXTURE, linerOf, milledAt, shopWith } from './liner.ts'

const ENGINE = { stroke: 54, rod: 100, pinOffset: 0, crownBelowTop: 0.4 }
const MAIN: Asked = { at: 78, top: 44, height: 10.4, width: 17, up: 15, back: 32, corner: { on: 'bore', radius: 2.8 } }
const MILLED = milledAt(47.8, 55.2)

function plan(ports: readonly Asked[], shop = shopWith(), milled = MILLED) {
  const planned = planPorts(linerOf(ports), shop, milled)
  return { ...planned, codes: planned.findings.map(({ code }) => code) }
}
function only(port: Asked, shop = shopWith(), milled = MILLED): PlannedPort {
  const { ports, findings } = plan([port], shop, milled)
  if (!ports[0]) throw new Error(findings.map(({ message }) => message).join('; '))
  return ports[0]
}
function window(port: Asked, shop = shopWith(), milled = MILLED): PortWindow {
  const [first] = only(port, shop, milled).windows
  if (!first) throw new Error('no window')
  return first
}

/** Legal ports of a 48 mm bore. */
const legal: fc.Arbitrary<Asked> = fc
  .record({
    at: fc.integer({ min: -179, max: 179 }).filter(at => at !== 0),
    top: fc.double({ min: 25, max: 45, noNaN: true }),
    height: fc.double({ min: 6, max: 16, noNaN: true }),
    width: fc.double({ min: 8, max: 24, noNaN: true }),
    up: fc.integer({ min: -10, max: 45 }),
    back: fc.integer({ min: -30, max: 30 }),
    share: fc.double({ min: 0.5, max: 0.95, noNaN: true }),
    cut: fc.constantFrom('level' as const, 'straight' as const),
  })
  .map(({ share, ...port }) => ({
    ...port,
    corner: { on: 'bore' as const, radius: (share * Math.min(port.height, port.width * 0.6)) / 2.6 },
  }))

describe('symmetry', () => {
  it('sets the mirror image of a port to mirrored settings', () => {
    fc.assert(
      fc.property(legal, port => {
        const [left, right] = plan([port, { ...port, at: -port.at }]).ports
        const [a, b] = [left?.windows[0], right?.windows[0]]
        if (!a || !b) return
        expect(a.rotary + b.rotary).toBe(0)
        expect(a.crossOffset + b.crossOffset).toBeCloseTo(0, 12)
        expect([a.tilt, a.tools]).toEqual([b.tilt, b.tools])
        for (const key of ['x', 'z', 'pathLength', 'largestCutter', 'cutter'] as const)
          expect(a[key]).toBeCloseTo(b[key], 9)
        expect(a.entryHole.x).toBeCloseTo(b.entryHole.x, 9)
        expect(a.entryHole.y).toBeCloseTo(-b.entryHole.y, 9)
        expect(a.edges.asCut.highest).toBeCloseTo(b.edges.asCut.highest, 9)
        expect(a.edges.asCut.lowest).toBeCloseTo(b.edges.asCut.lowest, 9)
      }),
    )
  })
  it('reverses the rotary and nothing else when the head turns the other way', () => {
    fc.assert(
      fc.property(legal, port => {
        const one = plan([port]).ports[0]?.windows[0]
        const other = plan([port], shopWith({ positiveRotary: 'Z to Y' })).ports[0]?.windows[0]
        if (!one || !other) return
        expect(other).toEqual({ ...one, rotary: 0 - one.rotary })
      }),
    )
  })
  it('cuts the same place whichever way the head faces', () => {
    fc.assert(
      fc.property(legal, fc.constantFrom<'+X' | '-X'>('+X', '-X'), (port, headFaces) => {
        const shop = shopWith({ headFaces })
        const found = plan([port], shop).ports[0]
        const set = found?.windows[0]
        if (!set || !found) return
        // From the finished outline itself: every point of it must lie under the cutter-plane outline, moved to the machine.
        const points = set.outline.finished.toReversed().map(({ azimuth, depth }) => {
          const [x, y] = direction(azimuth, 0)
          return toMachine(shop.fixture, set, [24 * x, 24 * y, -depth])
        })
        for (const [i, point] of points.entries()) {
          expect(point[0]).toBeCloseTo(set.x + (set.outline.cutterPlane[i]?.x ?? Number.NaN), 7)
          expect(point[1]).toBeCloseTo(set.crossOffset + (set.outline.cutterPlane[i]?.y ?? Number.NaN), 7)
        }
      }),
    )
  })
})

describe('level and straight cuts', () => {
  it('leaves a level edge level on the finished bore, and not on the bore as cut', () => {
    const { edges, outline } = window(MAIN)
    expect(edges.finished.highest).toBeCloseTo(44, 12)
    expect(edges.finished.lowest).toBeCloseTo(54.4, 12)
    const roof = outline.finished.filter(({ depth }) => depth < 44 + 1e-9)
    expect(roof.length).toBeGreaterThan(6)
    // A rising port stands higher in the smaller bore, the more the farther it is from the middle.
    expect(edges.asCut.highest).toBeLessThan(44 - 0.1 * Math.tan((15 * Math.PI) / 180))
  })
  it('opens a straight cut at its highest point, with the height asked for at any one azimuth', () => {
    const port = only({ ...MAIN, cut: 'straight', corner: { on: 'cutter', radius: 2 } })
    const [cut] = port.windows
    expect(cut?.edges.finished.highest).toBeCloseTo(44, 9)
    expect(port.bottom - port.top).toBeGreaterThan(10.4)
    expect(cut?.edges.finished.lowest).toBeCloseTo(port.bottom, 9)
    const at = (azimuth: number) => (cut?.outline.finished ?? []).filter(point => Math.abs(point.azimuth - azimuth) < 4)
    const depths = at(78).map(({ depth }) => depth)
    expect(Math.max(...depths) - Math.min(...depths)).toBeGreaterThan(10.2)
  })
  /** Derived: along the stream a straight cut is 10.4 times the cosine of its rise, half of it either side of its centre. */
  it('sets the cutter over the middle of a straight cut', () => {
    const { outline } = window({ ...MAIN, cut: 'straight', corner: { on: 'cutter', radius: 2 } })
    const along = outline.cutterPlane.map(({ x }) => x)
    const half = (10.4 * Math.cos((15 * Math.PI) / 180)) / 2
    expect(Math.max(...along)).toBeCloseTo(half, 9)
    expect(Math.min(...along)).toBeCloseTo(-half, 9)
  })
  it('gives both cuts of a level port one and the same window', () => {
    const straight: Asked = {
      at: 0,
      top: 40,
      height: 10,
      width: 12,
      cut: 'straight',
      corner: { on: 'cutter', radius: 2 },
    }
    const a = window(straight)
    const b = window({ ...straight, cut: 'level' })
    expect(a.area.window).toBeCloseTo(b.area.window, 9)
    expect(a.area.flow).toBeCloseTo(b.area.flow, 9)
    expect(a.area.flow).toBeCloseTo(12 * 10 - (4 - Math.PI) * 4, 9)
  })
  it('takes the window area of a level port with drawn corners as arc times height, corners off', () => {
    const port = only(MAIN)
    const arc = 24 * 2 * Math.asin(17 / 48)
    expect(port.area.window).toBeCloseTo(arc * 10.4 - (4 - Math.PI) * 2.8 ** 2, 7)
  })
})

describe('bridges', () => {
  const bridged: Asked = { at: 0, top: 38, height: 16, width: 27, bridge: 2.6, corner: { on: 'bore', radius: 3 } }
  it('leaves a bar of parallel sides between two windows at one rotary setting', () => {
    const [a, b] = only(bridged).windows
    expect(a?.rotary).toBe(b?.rotary)
    expect(a?.at).toBeCloseTo(-(b?.at ?? 0), 12)
    const inner = (w: PortWindow | undefined) =>
      (w?.outline.finished ?? []).map(({ azimuth }) => 24 * Math.sin((azimuth * Math.PI) / 180))
    expect(Math.min(...inner(b)) - Math.max(...inner(a))).toBeCloseTo(2.6, 9)
    expect(Math.max(...inner(b)) - Math.min(...inner(a))).toBeCloseTo(27, 9)
  })
  it('refuses a bridge as wide as the port', () => {
    expect(plan([{ ...bridged, bridge: 27 }]).codes).toContain('ports/bridge-too-wide')
    expect(plan([{ ...bridged, bridge: 10 }]).codes).not.toContain('ports/bridge-too-wide')
  })
})

describe('stock on the top face', () => {
  it('moves depths as they measure then, and X, by the stock', () => {
    const bare = window(MAIN)
    const stocked = window(MAIN, shopWith(), milledAt(47.8, 55.2, 0.3))
    expect(stocked.edges.asCut.highest - bare.edges.asCut.highest).toBeCloseTo(0.3, 12)
    expect(stocked.edges.finished).toEqual(bare.edges.finished)
    expect(stocked.x - bare.x).toBeCloseTo(-0.3 * Math.cos((15 * Math.PI) / 180), 9)
  })
  it('gives the milling its depth from the face as it stands, with the works’ tolerance', () => {
    const { sizes, ports } = plan([MAIN], shopWith(), milledAt(47.8, 55.2, 0.3))
    const depth = sizes.find(({ measure }) => measure === 'depth')
    expect(depth?.nominal).toBe(ports[0]?.windows[0]?.edges.asCut.highest)
    expect((depth?.upper ?? 0) - (depth?.lower ?? 0)).toBeCloseTo(0.1, 12)
    expect(sizes.map(({ measure }) => measure)).toEqual(['depth', 'height', 'width'])
  })
})

describe('timing', () => {
  it('turns an opening into a depth and the depth into the same opening', () => {
    const part = linerOf([{ at: 0, opens: 106, height: 16 }], { engine: { ...ENGINE, pinOffset: 2 } })
    const [port] = planPorts(part, shopWith(), MILLED).ports
    const again = linerOf([{ at: 0, top: port?.top ?? 0, height: 16 }], { engine: { ...ENGINE, pinOffset: 2 } })
    const [same] = planPorts(again, shopWith(), MILLED).ports
    expect(same?.opens).toBeCloseTo(106, 9)
    expect(same?.closes).toBeCloseTo(port?.closes ?? Number.NaN, 9)
    expect(360 - (port?.closes ?? 0)).toBeLessThan(106)
  })
  it('has no timing without an engine, and none for an inlet that the skirt opens', () => {
    expect(only({ at: 0 })).not.toHaveProperty('opens')
    const inlet = linerOf([{ at: 180, role: 'inlet', top: 70, height: 8 }], { engine: ENGINE })
    const [port] = planPorts(inlet, shopWith(), MILLED).ports
    expect(port).not.toHaveProperty('opens')
  })
})

it('shows a working for every setting of a window', () => {
  const { workings } = planPorts(linerOf([MAIN], { engine: ENGINE }), { ...shopWith(), fixture: FIXTURE }, MILLED)
  const symbols = workings.map(({ symbol }) => symbol)
  for (const symbol of ['tilt', 'A', 'Y', 'X', 'Z', 'w', 'h_q', 'D', 'l_path', 'dtheta', 'dtheta_tenth']) {
    expect(symbols).toContain(symbol)
  }
})

describe('gas exchange', () => {
  const speed = { ...ENGINE, speed: 4200 }
  const exhaust: Asked = { name: 'exhaust', role: 'exhaust', at: 0, opens: 106, height: 16, width: 27 }
  const main: Asked = { ...MAIN, name: 'main', role: 'transfer', opens: 121 }
  const { top: _, ...opening } = main
  const { gasExchange, ports } = planPorts(linerOf([exhaust, opening], { engine: speed }), shopWith(), MILLED)
  it('counts the blowdown from exhaust to transfer opening', () => {
    expect(gasExchange?.blowdown?.angle).toBeCloseTo(15, 9)
    expect(gasExchange?.blowdown?.time).toBeCloseTo(15 / (6 * 4.2), 9)
  })
  it('uncovers each port from nothing to its flow area', () => {
    for (const { uncovered = [], area, opens, closes } of ports) {
      expect([uncovered[0]?.angle, uncovered.at(-1)?.angle]).toEqual([opens, closes])
      expect(uncovered[0]?.area).toBeCloseTo(0, 6)
      expect(Math.max(...uncovered.map(point => point.area))).toBeLessThanOrEqual(area.flow + 1e-6)
      expect(Math.max(...uncovered.map(point => point.area))).toBeGreaterThan(0.99 * area.flow)
    }
  })
  it('says of every reference range where it is from', () => {
    expect(gasExchange?.references.length).toBeGreaterThan(6)
    for (const { source } of gasExchange?.references ?? []) expect(source).toMatch(/memory|practice|Jennings/)
  })
  it('compresses what it traps, as computed separately for a bore of 24 and a stroke of 22', () => {
    const engine = { stroke: 22, rod: 40, pinOffset: 0, crownBelowTop: 0, speed: 10_000, headVolume: 0.95 }
    const port = { name: 'exhaust', role: 'exhaust', at: 0, opens: 105, bottom: 22, width: 14 } as const
    const corner = { on: 'cutter', radius: 2 } as const
    const small = linerOf([{ ...port, corner }], { engine, boreSize: 24 })
    const { gasExchange } = planPorts(small, shopWith(), milledAt(23.8, 30))
    expect(gasExchange?.geometricRatio).toBeCloseTo(11.48, 2)
    expect(gasExchange?.trappedRatio).toBeCloseTo(8.278, 3)
    expect(gasExchange?.meanPistonSpeed).toBeCloseTo(7.333, 3)
    // By the mean area 1.718e-4 s·cm²/cm³, 13.4 % above the integral of 1.514e-4.
    const [exhausts] = gasExchange?.areas ?? []
    expect(exhausts?.meanAreaTimeArea).toBeCloseTo(0.01718, 4)
    expect((exhausts?.meanAreaTimeArea ?? 0) / (exhausts?.specificTimeArea ?? 1)).toBeCloseTo(1.134, 2)
  })
  it('has none without an engine', () => {
    expect(plan([MAIN])).not.toHaveProperty('gasExchange')
  })
})
