import { describe, expect, it } from 'vitest'
import { tilted } from '../../src/machine-frame.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import type { Fixture } from '../../src/shop/shop.ts'
import { radians } from '../../src/units.ts'
import { type Asked, linerOf, milledAt, shopWith } from './liner.ts'

const BOOST: Asked = { name: 'boost', at: 180, up: 50, top: 42, corner: { on: 'cutter', radius: 1.5 } }
const EXHAUST: Asked = { name: 'exhaust', at: 0, top: 40 }
const SLIM: Partial<Fixture> = { chuck: { diameter: 60, length: 40 } }
const ALL: Partial<Fixture> = {
  ...SLIM,
  rotary: { diameter: 90, length: 110 },
  plate: { from: -160, to: 70, width: 110, top: 0, thickness: 20 },
  head: { diameter: 130, spindleLength: 110, fullyUp: 330 },
}
const plan = (fixture: Partial<Fixture> = {}, asked: readonly Asked[] = [EXHAUST, BOOST]) =>
  planPorts(linerOf(asked), shopWith(fixture), milledAt(47.8, 55.2))
const clearances = (planned: ReturnType<typeof plan>) =>
  planned.findings.filter(({ code }) => code === 'ports/holder-clearance')
const boostOf = ({ ports }: ReturnType<typeof plan>) => ports.find(({ name }) => name === 'boost')?.windows[0]

describe('what stands behind the chuck and over the spindle', () => {
  it('leaves the ports alone where it is slim', () => {
    expect(clearances(plan(ALL))).toEqual([])
    expect(plan(ALL).findings.map(({ code }) => code)).not.toContain('ports/clearance-not-checked')
  })

  it('is named where nobody says what it is', () => {
    const { findings, fixture } = plan(SLIM)
    const [warning] = findings.filter(({ code }) => code === 'ports/clearance-not-checked')
    expect(warning).toMatchObject({ severity: 'warning' })
    expect(warning?.message).toMatch(/body of the rotary.*plate.*head/)
    expect(fixture?.notChecked).toEqual(['rotary', 'plate', 'head', 'tilting'])
  })

  it('strikes as deep as the corner of the rotary stands over what comes down beside it', () => {
    const diameter = 150
    const planned = plan({ ...SLIM, rotary: { diameter, length: 110 } })
    const { held, plunge, cutter = 0, outline, x = 0 } = boostOf(planned) ?? {}
    // In the plane of the rotary's axis. Its corner next to the chuck, 40 behind the chuck's face at -2, tilted by 50° leans
    // over the work; the upper line rises away from the tool behind it.
    const [cornerX, , cornerZ] = tilted([-42, 0, 50 + diameter / 2], 50)
    const left = x + Math.min(...(outline?.cutterPlane ?? []).map(p => p.x)) + cutter / 2
    const edge = left - 8
    const nose = (plunge?.zThrough ?? 0) - 0.3 + (held?.stickOut ?? 0)
    // Under the holder's rim the front face of the body, which goes down toward the tool from its corner.
    const onFace = edge > cornerX ? cornerZ - (edge - cornerX) / Math.tan(radians(50)) : cornerZ
    const onTop = cornerZ + Math.max(0, cornerX - edge) * Math.tan(radians(50))
    expect(held).toMatchObject({ by: 'holder', to: 'body of the rotary' })
    expect(held?.room).toBeCloseTo(nose - Math.max(onFace, onTop), 1)
    expect(clearances(planned)[0]?.message).toContain('holder over the 2 mm cutter strikes the body of the rotary by')
  })

  it('strikes the head where the spindle under it is short, and says by how much', () => {
    const head = (spindleLength: number) => ({ diameter: 200, spindleLength, fullyUp: 330 })
    const planned = plan({ ...ALL, head: head(20) })
    const { held } = boostOf(planned) ?? {}
    expect(held).toMatchObject({ by: 'head', to: 'body of the rotary' })
    const strikes = -(held?.room ?? 0)
    expect(strikes).toBeGreaterThan(5)
    // A longer spindle under the head clears by as much as it is longer.
    const longer = boostOf(plan({ ...ALL, head: head(20 + strikes - 1) }))?.held
    expect(longer?.room).toBeCloseTo(-1, 1)
    expect(clearances(planned)[0]?.message).toContain('the head over the 2 mm cutter strikes the body of the rotary by')
  })

  it('strikes the far end of a plate that stands up when it is tilted', () => {
    // 50° bring the end of a plate 300 behind the pivot to X -193, Z 230; the head is wide.
    const plate = { from: -300, to: 70, width: 110, top: 0, thickness: 20 }
    const planned = plan({ ...ALL, plate, head: { diameter: 560, spindleLength: 60, fullyUp: 500 } })
    const { held, x = 0, outline, cutter = 0, plunge } = boostOf(planned) ?? {}
    expect(held).toMatchObject({ by: 'head', to: 'plate of the rotary' })
    const [endX, , endZ] = tilted([-300, 0, 0], 50)
    const left = x + Math.min(...(outline?.cutterPlane ?? []).map(p => p.x)) + cutter / 2
    expect(left - 280).toBeLessThan(endX)
    const face = (plunge?.zThrough ?? 0) - 0.3 + (held?.stickOut ?? 0) + 60 + 60
    expect(held?.room).toBeCloseTo(face - endZ, 1)
  })

  it('is over a wide head or a wide rotary only in X: Y counts too', () => {
    const narrow = plan({ ...ALL, plate: { from: -300, to: 70, width: 1, top: 0, thickness: 20 } })
    expect(boostOf(narrow)?.held?.room).toBeGreaterThan(2)
  })
})

describe('heights', () => {
  const { fixture } = plan(ALL)
  it('for moves across lie 5 over the highest corner of all that tilts, at every tilt', () => {
    for (const { tilt, across } of fixture?.tilts ?? []) {
      const corners = [
        [80, 50 + 31.1], // flange
        [76, 50 + 31.1],
        [76, 50 + 27.6], // seat
        [-12, 50 + 27.6],
        [-2, 50 + 30], // chuck
        [-42, 50 + 30],
        [-42, 50 + 45], // rotary
        [-152, 50 + 45],
        [-160, 0], // plate
        [70, 0],
      ].map(([x = 0, z = 0]) => tilted([x, 0, z], tilt)[2])
      expect(across).toBeCloseTo(Math.max(...corners) + 5, 9)
    }
  })

  it('before a tilt lie over all that rises on the way, not only at both ends of it', () => {
    // The corner over the rotary's far end stands 179.2 from the pivot and comes straight over it at 58°: at 50° it is nearly there.
    const far = Math.hypot(152, 95)
    const over = Math.atan2(152, 95) - radians(50)
    expect(fixture?.tilting?.reaches).toBeCloseTo(far * Math.cos(over), 9)
    // Of a shorter body the corner is over the pivot at 44°, and at 50° on its way down again.
    const short = plan({ ...SLIM, rotary: { diameter: 90, length: 50 } })
    expect(short.fixture?.tilting?.reaches).toBeCloseTo(Math.hypot(92, 95), 9)
    expect(short.fixture?.tilting?.by).toBe('body of the rotary')
  })

  it('are a finding where the spindle cannot go as high', () => {
    const low = plan({ ...ALL, head: { diameter: 130, spindleLength: 110, fullyUp: 250 } })
    const [found] = low.findings.filter(({ code }) => code === 'ports/tilting-clearance')
    expect(found).toMatchObject({ severity: 'error' })
    const { reaches = 0, fullyUp = 0 } = low.fixture?.tilting ?? {}
    expect(found?.message).toContain(`strikes the longest tool by ${(reaches - fullyUp).toFixed(2)}`)
    // Nothing is tilted, nothing rises.
    expect(plan(ALL, [EXHAUST]).fixture?.tilting).toBeUndefined()
  })
})
