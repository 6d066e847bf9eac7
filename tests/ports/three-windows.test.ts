import { describe, expect, it } from 'vitest'
import { readPart } from '../../src/part/read-part.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import { type Asked, linerOf, milledAt, shopWith } from './liner.ts'

const CORNER = 1.5
const THREE: Asked = {
  at: 0,
  top: 38,
  height: 16,
  width: 30,
  bridge: [2.6, 3.4],
  corner: { on: 'bore', radius: CORNER },
}
const plan = (ports: readonly Asked[]) => planPorts(linerOf(ports), shopWith(), milledAt(47.8, 55.2))
const degrees = (radians: number): number => (radians * 180) / Math.PI

describe('two bars in a port', () => {
  const [port] = plan([THREE]).ports
  // Across the stream 30 mm less both bars leave three windows of 8 mm. On a bore of radius 24 an edge at l stands at asin(l / 24).
  const edges = [-15, -7, -4.4, 3.6, 7, 15].map(l => degrees(Math.asin(l / 24)))
  it('leave three windows of one width across the stream', () => {
    const middles = [0, 2, 4].map(i => ((edges[i] ?? 0) + (edges[i + 1] ?? 0)) / 2)
    expect(port?.windows.map(({ at }) => at)).toEqual(middles.map(at => expect.closeTo(at, 9)))
  })
  it('leave the developed area that the three rounded rectangles have', () => {
    const areas = [0, 2, 4].map(i => {
      const across = (24 * Math.PI * ((edges[i + 1] ?? 0) - (edges[i] ?? 0))) / 180
      return 16 * across - (4 - Math.PI) * CORNER ** 2
    })
    expect(port?.area.window).toBeCloseTo(
      areas.reduce((sum, area) => sum + area, 0),
      6,
    )
    expect(port?.windows.map(({ area }) => area.window)).toEqual(areas.map(area => expect.closeTo(area, 6)))
  })
  it('leave the flow that one port as wide has, less the bars and the corners that they make', () => {
    // Seen along the stream a bar hides its own thickness; with corners in the cutter's plane each window loses (4 - π)ρ².
    const cut = { on: 'cutter', radius: CORNER } as const
    const flow = (bridge: Asked['bridge']): number => {
      const [one] = plan([{ ...THREE, corner: cut, ...(bridge && { bridge }) }]).ports
      return one?.area.flow ?? Number.NaN
    }
    const { bridge: _, ...whole } = THREE
    const open = plan([{ ...whole, corner: cut }]).ports[0]?.area.flow ?? Number.NaN
    expect(open - flow([2.6, 3.4])).toBeCloseTo(16 * 6 + 2 * (4 - Math.PI) * CORNER ** 2, 4)
  })
  it('are judged by the land that each leaves, and by their sum', () => {
    const codes = (bridge: Asked['bridge']) =>
      plan([{ ...THREE, ...(bridge && { bridge }) }]).findings.map(({ code }) => code)
    expect(codes([1.9, 3])).toContain('ports/thin-land')
    expect(codes([3, 1.9])).toContain('ports/thin-land')
    expect(codes([2.1, 2.1])).not.toContain('ports/thin-land')
    expect(codes([15, 15.1])).toContain('ports/bridge-too-wide')
  })
})

const file = (bridge: string): string => `
part: {number: OX-1, title: Liner, revision: A, kind: liner}
material: {grade: 42CrMo4}
body:
  length: 92 ±0.05
  outside: [{to: 92, size: 55 g6, name: seat}]
  bore: {size: 48 H6, Ra: 0.3}
ports:
  - {name: exhaust, at: 60, mirror: true, top: 38, height: 16, width: 30, corner: 1.5, bridge: ${bridge}}
`
const read = (bridge: string) => readPart(file(bridge), 'liner.yaml')

describe('the bars in the part file', () => {
  it('are one length, or a list of one or two; the mirror image has them the other way about', () => {
    expect(read('2.6').part?.ports[0]?.bridge).toBe(2.6)
    expect(read('[2.6]').part?.ports[0]?.bridge).toBe(2.6)
    expect(read('[2.6, 0.1 in]').part?.ports.map(({ bridge }) => bridge)).toEqual([
      [2.6, expect.closeTo(2.54, 9)],
      [expect.closeTo(2.54, 9), 2.6],
    ])
  })
  it('mirror into windows that mirror', () => {
    const [one, other] = plan((read('[2.6, 3.4]').part?.ports ?? []).map(({ path: _, ...port }) => port)).ports
    const mirrored = other?.windows.map(({ at }) => -at).toReversed()
    expect(one?.windows.map(({ at }) => at)).toEqual(mirrored?.map(at => expect.closeTo(at, 9)))
  })
  it.each([
    ['[2, 2, 2]', 'input/schema'],
    ['[15, 15.5]', 'input/port'],
    ['[2, -1]', 'input/out-of-range'],
    ['[2, wide]', 'input/unreadable'],
  ])('%s is a finding: %s', (bridge, code) => {
    const { part, findings } = read(bridge)
    expect(part).toBeUndefined()
    expect(findings.map(finding => finding.code)).toContain(code)
    expect(findings[0]?.at.line).toBe(9)
  })
})
