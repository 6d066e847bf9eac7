import { describe, expect, it } from 'vitest'
import type { Part } from '../../src/part/part.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import type { Fixture } from '../../src/shop/shop.ts'
import type { Tool } from '../../src/shop/tool.ts'
import { type Asked, linerOf, milledAt, shopWith } from './liner.ts'

const MAIN: Asked = { at: 78, top: 44, height: 10.4, width: 17, up: 15, back: 32 }
const ENGINE = { stroke: 54, rod: 100, pinOffset: 0, crownBelowTop: 0.4 }
const endMill = (diameter: number, fluteLength = 20): Tool => ({
  name: `end mill ${diameter}`,
  kind: 'end mill',
  diameter,
  fluteLength,
  shank: 6,
  reach: 40,
  teeth: 4,
})
const drill: Tool = {
  name: 'drill 2.2',
  kind: 'drill',
  diameter: 2.2,
  fluteLength: 14,
  shank: 4,
  reach: 40,
  point: 140,
}

type Setting = {
  readonly changes?: Partial<Part>
  readonly tools?: readonly Tool[]
  readonly fixture?: Partial<Fixture>
}

function findings(port: Asked, { changes = {}, tools, fixture }: Setting = {}) {
  const shop = shopWith(fixture, tools ? { tools } : {})
  return planPorts(linerOf([port], changes), shop, milledAt(47.8, 55.2)).findings
}
const codes = (port: Asked, setting?: Setting) => findings(port, setting).map(({ code }) => code)
/** Of the port: what this fixture does not say of its bodies is told of every port, and tested with them. */
const faults = (port: Asked, setting?: Setting) =>
  findings(port, setting).flatMap(({ code, severity }) =>
    severity === 'note' || code === 'ports/clearance-not-checked' ? [] : [code],
  )

describe('a corner that a rising, turned port closes', () => {
  const TOO_TIGHT: Asked = { ...MAIN, corner: { on: 'bore', radius: 2 } }
  it('says which cutter would reach and what the one on hand leaves', () => {
    const [finding] = findings(TOO_TIGHT, { tools: [endMill(2), drill] })
    expect(finding).toMatchObject({ code: 'ports/to-get', severity: 'warning' })
    expect(finding?.message).toMatch(
      /largest cutter that reaches it is 1\.\d\d mm, the smallest on hand 2 mm, which leaves 2\.\d\d mm/,
    )
    expect(finding?.hint).toMatch(/draw the corner \d\.\d\d mm or more/)
    expect(finding?.at).toEqual({ file: 'liner.yaml', line: 10, column: 5 })
  })
  it('draws the corner that the hint asks for without complaint', () => {
    const [finding] = findings(TOO_TIGHT, { tools: [endMill(2), drill] })
    const radius = Number(/draw the corner (\d+\.\d\d)/.exec(finding?.hint ?? '')?.[1])
    expect(faults({ ...MAIN, corner: { on: 'bore', radius } }, { tools: [endMill(2), drill] })).toEqual([])
    expect(
      faults({ ...MAIN, corner: { on: 'bore', radius: radius - 0.06 } }, { tools: [endMill(2), drill] }),
    ).not.toEqual([])
  })
  it('lets the same corner be on a port that does not rise', () => {
    expect(
      faults({ ...MAIN, up: 0, back: 0, corner: { on: 'bore', radius: 2 } }, { tools: [endMill(2), drill] }),
    ).toEqual([])
  })
  it('warns of a cutter that only just goes round', () => {
    const near = { ...MAIN, up: 0, back: 0, corner: { on: 'cutter' as const, radius: 1.1 } }
    expect(faults(near, { tools: [endMill(2), drill] })).toEqual(['ports/corner-near-cutter'])
    expect(faults({ ...near, corner: { on: 'cutter', radius: 1.25 } }, { tools: [endMill(2), drill] })).toEqual([])
    expect(faults({ ...near, corner: { on: 'cutter', radius: 1 } }, { tools: [endMill(2), drill] })).toEqual([
      'ports/to-get',
    ])
    // Under 0.8 nobody mills a wall through: common practice, no source.
    expect(faults({ ...near, corner: { on: 'cutter', radius: 0.3 } }, { tools: [endMill(2), drill] })).toEqual([
      'ports/corner-too-tight',
    ])
  })
})

describe('tools that the works lacks', () => {
  const port: Asked = { at: 0, corner: { on: 'cutter', radius: 2 } }
  it.each([
    ['has no end mill', [drill]],
    ['reaches through the wall', [endMill(2, 3), drill]],
    ['no drill on hand', [endMill(2)]],
  ])('are named to get, with why: %s', (why, tools) => {
    const found = findings(port, { tools })
    expect(new Set(faults(port, { tools }))).toEqual(new Set(['ports/to-get']))
    expect(found[0]).toMatchObject({ code: 'ports/to-get', severity: 'warning', message: expect.stringContaining(why) })
  })
  it('has no complaint with a drill and a long enough cutter', () => {
    expect(faults(port, { tools: [endMill(2, 7), drill] })).toEqual([])
  })
})

describe('designs that cannot be cut', () => {
  const tilt = { fixture: { tiltLimits: [-10, 60] as const } }
  it.each<[string, Asked, Setting, Asked, Setting]>([
    ['ports/back-on-centre-line', { at: 180, back: 10 }, {}, { at: 179, back: 10 }, {}],
    ['ports/beyond-part', { at: 0, top: 85 }, {}, { at: 0, top: 81 }, {}],
    [
      'ports/corner-too-large',
      { at: 0, height: 10, corner: { on: 'bore', radius: 5.1 } },
      {},
      { at: 0, height: 10, corner: { on: 'bore', radius: 5 } },
      {},
    ],
    [
      'ports/edge-outside-stroke',
      { at: 0, top: 54.4 },
      { changes: { engine: ENGINE } },
      { at: 0, top: 54.3 },
      { changes: { engine: ENGINE } },
    ],
    [
      'ports/edge-outside-stroke',
      { at: 0, opens: 180 },
      { changes: { engine: ENGINE } },
      { at: 0, opens: 120 },
      { changes: { engine: ENGINE } },
    ],
    ['ports/edges-crossed', { at: 0, top: 40, bottom: 40 }, {}, { at: 0, top: 40, bottom: 50 }, {}],
    [
      'ports/linkage-locks',
      { at: 0 },
      { changes: { engine: { ...ENGINE, rod: 26 } } },
      { at: 0 },
      { changes: { engine: { ...ENGINE, rod: 60 } } },
    ],
    ['ports/misses-bore', { at: 60, back: 70, width: 18 }, {}, { at: 60, back: 40, width: 18 }, {}],
    ['ports/knife-edge', { at: 60, back: 55, width: 10 }, {}, { at: 60, back: 50, width: 10 }, {}],
    ['ports/no-engine', { at: 0, opens: 106 }, {}, { at: 0, top: 40 }, {}],
    ['ports/reaches-flange', { at: 0, top: 3 }, {}, { at: 0, top: 4.1 }, {}],
    [
      'ports/rotary-limits',
      { at: 120 },
      { fixture: { rotaryLimits: [-90, 90] } },
      { at: 80 },
      { fixture: { rotaryLimits: [-90, 90] } },
    ],
    ['ports/tilt-limits', { at: 0, up: -11 }, tilt, { at: 0, up: -10 }, tilt],
    ['ports/wider-than-bore', { at: 0, width: 48 }, {}, { at: 0, width: 40 }, {}],
    ['ports/corner-in-cutter-plane', { at: 0, up: 10, cut: 'straight' }, {}, { at: 0, up: 0, cut: 'straight' }, {}],
  ])('%s, and a near miss', (code, trips, setting, near, nearSetting) => {
    expect(codes(trips, setting)).toContain(code)
    expect(codes(near, nearSetting)).not.toContain(code)
  })
  it('takes a port through two bore diameters for a mistake', () => {
    const { bore } = linerOf([])
    const [band] = bore
    if (!band) throw new Error('no bore')
    const to = { ...band.to, nominal: 45 }
    const bands = [
      { ...band, name: 'upper', to },
      { ...band, name: 'lower', from: 45 },
    ]
    expect(codes({ at: 0, top: 40 }, { changes: { bore: bands } })).toContain('ports/two-bore-bands')
    expect(codes({ at: 0, top: 46 }, { changes: { bore: bands } })).not.toContain('ports/two-bore-bands')
  })
})
