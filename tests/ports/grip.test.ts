import { describe, expect, it } from 'vitest'
import type { Setting } from '../../src/ports/closest-place.ts'
import { fixtureBodies } from '../../src/ports/fixture-bodies.ts'
import { heldCutter } from '../../src/ports/held-cutter.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import type { Fixture } from '../../src/shop/shop.ts'
import { type Asked, FIXTURE, linerOf, milledAt, shopWith } from './liner.ts'

const BOOST: Asked = { name: 'boost', at: 180, up: 50, top: 42, corner: { on: 'cutter', radius: 1.5 } }
const plan = (fixture: Partial<Fixture> = {}, port: Asked = BOOST) =>
  planPorts(linerOf([port]), shopWith(fixture), milledAt(47.8, 55.2))
const codes = (planned: ReturnType<typeof plan>) => planned.findings.map(({ code }) => code)

describe('what the jaws hold', () => {
  it('is the least grip of the works at the lower end, so the jaws stand that much over the part', () => {
    const { fixture, chuckings } = plan()
    // 92 long, face at 80: the lower end stands at 80 - 92 = -12, the jaws 10 further out.
    expect(fixture?.grip).toMatchObject({ surface: 'seat', diameter: 55.2, end: 'bottom', length: 10, front: 82 })
    expect(fixture?.grip.chuckFace).toBe(-2)
    expect(chuckings).toMatchObject([{ end: 'top', grip: { surface: 'seat', length: 10 } }])
  })
  it('is the flange where the head end is in the chuck, and no more of it than there is', () => {
    const planned = plan({ headFaces: '-X' })
    expect(planned.fixture?.grip).toMatchObject({ surface: 'flange', end: 'top', length: 4, front: 4 })
    expect(codes(planned)).toContain('ports/short-grip')
  })
  it('follows from a chuck face that the works measured, and is refused where that holds too little', () => {
    const at = (faceDistance: number) => plan({ chuck: { diameter: 60, length: 40, faceDistance } })
    expect(at(3).fixture?.grip.length).toBe(15)
    expect(codes(at(3))).not.toContain('ports/short-grip')
    expect(at(-12).fixture?.grip.length).toBe(0)
    expect(codes(at(-12))).toContain('ports/short-grip')
  })
  it('ends as far below the ports as the outside edge of the lowest lies above the jaws', () => {
    const level: Asked = { at: 0, top: 60, height: 12 }
    expect(plan({}, level).fixture?.grip.toPort).toBeCloseTo(82 - 72, 9)
    expect(codes(plan({}, level))).not.toContain('ports/grip-on-port')
    expect(codes(plan({}, { ...level, top: 72 }))).toContain('ports/grip-on-port')
  })
})

describe('a boost at 50° over a chuck of Ø80', () => {
  const planned = plan({ chuck: { diameter: 80, length: 40 } })
  const window = planned.ports[0]?.windows[0]
  const held = window?.held
  it('strikes its top line by as much as that stands over the holder', () => {
    // The top line lies 50 + 40 up; turned by 50° about +Y, Z toward X, it falls toward +X. The holder's rim is Ø16.
    const t = (50 * Math.PI) / 180
    const left = Math.min(...(window?.outline.cutterPlane ?? []).map(({ x }) => (window?.x ?? 0) + x))
    const rim = left + (window?.cutter ?? 0) / 2 - 8
    const corner = 90 / Math.cos(t) - rim * Math.tan(t)
    const nose = (window?.plunge.zThrough ?? 0) - 0.3 + (held?.stickOut ?? 0)
    expect(held).toMatchObject({ by: 'holder', to: 'chuck' })
    expect(held?.room).toBeCloseTo(nose - corner, 1)
    expect(held?.room).toBeLessThan(-10)
  })
  it('is told what alone would help, with figures', () => {
    const hint = planned.findings.find(({ code }) => code === 'ports/holder-clearance')?.hint
    const [, out, not, nose] = (
      /let it stick out ([\d.]+) mm, not ([\d.]+), or use a holder with a nose of Ø([\d.]+)/.exec(hint ?? '') ?? []
    ).map(Number)
    // To a tenth, to the side that gives more room.
    const { stickOut = Number.NaN, holderDiameter = Number.NaN } = held?.remedies ?? {}
    expect(out).toBeCloseTo(Math.ceil(stickOut * 10) / 10, 6)
    expect(not).toBeCloseTo(held?.stickOut ?? Number.NaN, 1)
    expect(nose).toBeCloseTo(Math.floor(holderDiameter * 10) / 10, 6)
  })

  const bodies = fixtureBodies(FIXTURE, milledAt(47.8, 55.2), -2)
  const setting: Setting = { fixture: FIXTURE, tilt: 50, bodies, window: { x: [74, 78], y: [-5, 5] }, tip: 20 }
  const standing = { diameter: 2, shank: 6, flutes: 10 }
  const { remedies = {} } = heldCutter(setting, standing, 25, 2)
  const back = (by: number): Setting => ({
    ...setting,
    bodies: bodies.map(body => (body.of === 'chuck' ? { ...body, from: body.from - by, to: body.to - by } : body)),
  })
  const jaws = (diameter: number): Setting => ({
    ...setting,
    bodies: bodies.map(body => (body.of === 'chuck' ? { ...body, radius: diameter / 2 } : body)),
  })
  const nose = (diameter: number): Setting => ({
    ...setting,
    fixture: { ...FIXTURE, holder: { ...FIXTURE.holder, diameter } },
  })
  it.each([
    ['stick-out', remedies.stickOut, 1, (value: number) => heldCutter(setting, standing, value, 2)],
    ['holder', remedies.holderDiameter, -1, (value: number) => heldCutter(nose(value), standing, 25, 2)],
    ['jaws', remedies.chuckDiameter, -1, (value: number) => heldCutter(jaws(value), standing, 25, 2)],
    ['length', remedies.length, 1, (value: number) => heldCutter(back(value), standing, 25, 2)],
  ] as const)('clears by the margin with the %s named, and not with less of it', (_, value, way, held) => {
    if (value === undefined) throw new Error('no figure')
    expect(held(value).room).toBeGreaterThanOrEqual(2 - 1e-4)
    expect(held(value - way * 0.05).room).toBeLessThan(2)
  })
})
