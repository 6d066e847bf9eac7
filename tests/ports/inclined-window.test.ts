import { describe, expect, it } from 'vitest'
import { flowArea } from '../../src/ports/contour-measures.ts'
import { azimuthOn, heightOn, nearWall, runToNearWall } from '../../src/ports/cut-frame.ts'
import { edgesOn } from '../../src/ports/edges-on.ts'
import { radians } from '../../src/units.ts'
import { G2, G3, G5, G7, G8, slotOf, WINDOWS } from './slots.ts'

/** Printed to five figures. */
const figures = (value: number): number => Number(value.toPrecision(5))
const turn = (angle: number): number => (angle + 720) % 360

describe.each(WINDOWS)('slot %#: rise $slot.beta, heading $slot.psi, bore $slot.r', window => {
  const { slot } = window
  const { frame, m, b, contour } = slotOf(slot)

  it('runs through the wall as computed separately', () => {
    const out = { l: m, b }
    expect(figures(m)).toBe(window.m)
    expect(figures(nearWall(slot.R, m) - nearWall(slot.r, m))).toBeCloseTo(window.ds, 4)
    expect(figures(runToNearWall(frame, slot.r, out) - runToNearWall(frame, slot.R, out))).toBeCloseTo(window.wall, 4)
    expect(turn(figures(azimuthOn(frame, slot.R, m)))).toBeCloseTo(turn(window.phiOut), 2)
    expect(heightOn(frame, slot.R, out)).toBeCloseTo(window.zOut, 3)
  })

  it('has its highest and lowest edge where computed separately', () => {
    const edges = edgesOn({ frame, contour, radius: slot.r, middle: m, above: 0 })
    expect(-edges.highest).toBeCloseTo(window.high, 3)
    expect(-edges.lowest).toBeCloseTo(window.low, 3)
    // The second slot has two highest points, either side of 180.
    const off = Math.abs(turn(edges.highestAt) - turn(window.at))
    expect(Math.min(off, Math.abs(turn(edges.highestAt) - turn(360 - window.at)))).toBeLessThan(0.0055)
  })

  it('has its sides, arc and chord where computed separately', () => {
    const sides = [m - slot.W / 2, m + slot.W / 2].map(l => azimuthOn(frame, slot.r, l))
    for (const [i, side] of window.sides.entries()) expect(turn(sides[i] ?? Number.NaN)).toBeCloseTo(turn(side), 2)
    const span = radians(turn((sides[1] ?? 0) - (sides[0] ?? 0)))
    expect(slot.r * span).toBeCloseTo(window.arc, window.arc > 10 ? 3 : 4)
    expect(2 * slot.r * Math.sin(span / 2)).toBeCloseTo(window.chord, window.chord > 10 ? 3 : 4)
  })

  it('has the area of a rounded rectangle along the stream', () => {
    expect(flowArea(contour)).toBeCloseTo(slot.W * slot.H - (4 - Math.PI) * slot.rho ** 2, 9)
  })
})

describe('roof at the middle of the port, which is not the timing edge', () => {
  it.each([
    [G2, -16.166],
    [G3, -16.172],
    [G5, -16.429],
    [G7, -39.691],
    [G8, -16.793],
  ])('slot of bore %o', (slot, z) => {
    const { frame, m, b } = slotOf(slot)
    expect(heightOn(frame, slot.r, { l: m, b: b + slot.H / 2 })).toBeCloseTo(z, 3)
  })
})

describe('windows on the outside', () => {
  it.each([
    [G2, -19.031, -23.813, 168.46, 191.54],
    [G3, -16.48, -20.399, 52.629, 82.317],
    [G5, -17.01, -21.742, 49.016, 77.495],
    [G7, -39.929, -55.437, 38.746, 72.66],
  ])('slot of bore %o', (slot, high, low, from, to) => {
    const { frame, m, contour } = slotOf(slot)
    const edges = edgesOn({ frame, contour, radius: slot.R, middle: m, above: 0 })
    expect(-edges.highest).toBeCloseTo(high, 3)
    expect(-edges.lowest).toBeCloseTo(low, 3)
    expect(turn(azimuthOn(frame, slot.R, m - slot.W / 2))).toBeCloseTo(from, 2)
    expect(turn(azimuthOn(frame, slot.R, m + slot.W / 2))).toBeCloseTo(to, 2)
  })
})
