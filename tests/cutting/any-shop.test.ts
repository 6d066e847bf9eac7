import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { planCutting } from '../../src/cutting/plan-cutting.ts'
import { CUTTING_FAMILY } from '../../src/handbook/cutting-grades.ts'
import type { PortWindow } from '../../src/ports/port.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import type { Tool } from '../../src/shop/tool.ts'
import { toolsOf } from '../../src/shop/tool.ts'
import { partOf, portOf, sizeOf, stateOf, tube, windowOf } from './hand-made.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined })

/** A tool of another size; a bare one says nothing of what it may leave out. */
function scaled(tool: Tool, scale: number, bare: boolean): Tool {
  switch (tool.kind) {
    case 'turning tool':
    case 'parting blade':
      return tool
    case 'hone':
      return { ...tool, stones: { ...tool.stones, length: tool.stones.length * scale } }
    case 'internal wheel': {
      const { quill, ...wheel } = tool
      const sized = { ...wheel, diameter: wheel.diameter * scale, width: wheel.width * scale }
      return quill && !bare ? { ...sized, quill } : sized
    }
    case 'grinding wheel':
    case 'centreless wheel':
      return { ...tool, diameter: tool.diameter * scale, width: tool.width * scale }
    default:
      return { ...tool, diameter: tool.diameter * scale }
  }
}

/** The built-in works with its machines anything from a watchmaker's to a shipyard's, and its tools anything on a shelf. */
const shops: fc.Arbitrary<Shop> = fc
  .record({
    speedLimit: maybe(between(5, 500_000)),
    chuckLimit: maybe(between(5, 500_000)),
    power: maybe(between(0.01, 1000)),
    scale: between(0.2, 3),
    bare: fc.boolean(),
  })
  .map(({ speedLimit, chuckLimit, power, scale, bare }) => ({
    ...BUILT_IN_SHOP,
    machines: BUILT_IN_SHOP.machines.map(({ speedLimit: _, power: __, ...machine }) => ({
      ...machine,
      ...(speedLimit === undefined ? {} : { speedLimit }),
      ...(chuckLimit === undefined ? {} : { chuckLimit }),
      ...(power === undefined ? {} : { power }),
    })),
    tools: BUILT_IN_SHOP.tools.map(tool => scaled(tool, scale, bare)),
  }))

const materials = fc.record({
  grade: fc.constantFrom(...Object.keys(CUTTING_FAMILY)),
  hardness: maybe(between(60, 600)),
})

const sizes = fc.record({
  bore: between(6, 200),
  wall: between(0.5, 60),
  length: between(5, 400),
  Ra: between(0.02, 25),
})
const windows = fc.record({
  cutter: fc.constantFrom(0.4, 1, 2, 3, 6, 12),
  pathLength: between(0.5, 200),
  tightestCorner: between(0, 10),
  tilt: between(-60, 60),
  width: between(1, 400),
  y: between(-40, 40),
  room: between(0.01, 20),
})

/** The end mill of the works that comes nearest to a size, and any drill. */
function toolsFor(shop: Shop, wanted: number): Pick<PortWindow, 'cutter' | 'tools'> {
  const off = ({ diameter }: { readonly diameter: number }) => Math.abs(diameter - wanted)
  const mill = toolsOf(shop, 'end mill').toSorted((a, b) => off(a) - off(b))[0]
  const drill = toolsOf(shop, 'drill')[0]
  return {
    cutter: mill?.diameter ?? wanted,
    tools: { ...(mill && { cutter: mill.name }), ...(drill && { drill: drill.name }) },
  }
}

describe('any works and any part', () => {
  it('are planned without a throw, with figures that are numbers and times that are not negative', () => {
    fc.assert(
      fc.property(shops, materials, sizes, windows, fc.boolean(), (shop, { grade, hardness }, size, window, hard) => {
        const { bore, wall, length, Ra } = size
        const outside = bore + 2 * wall
        const part = partOf({
          material: { grade, written: grade, ...(hardness === undefined ? {} : { hardness }) },
          ...(hard ? { hardening: { process: 'gas nitriding', masked: [], path: '/hardening' } as const } : {}),
        })
        const shape = (stock: number, ported = false) =>
          tube(outside + stock, Math.max(bore - stock, 1), ported, length)
        const held = [sizeOf('bore', bore, 0.02, Ra), sizeOf('seat', outside, 0.02, Ra)]
        const states = [
          stateOf('rough-turn', tube(outside + 6, 0, false, length + 3), shape(2)),
          stateOf('finish-turn', shape(2), shape(0.2), held),
          stateOf('mill-ports', shape(0.2), shape(0.2, true)),
          stateOf('grind-outside', shape(0.2, true), shape(0, true)),
          stateOf('grind-bore', shape(0.2, true), shape(0.03, true)),
          stateOf('hone-bore', shape(0.03, true), shape(0, true), held),
        ].map((state, index) => ({ ...state, operation: { ...state.operation, number: 10 * (index + 1) } }))
        const { y, room, ...others } = window
        const port = portOf([
          windowOf({
            ...others,
            ...toolsFor(shop, others.cutter),
            entryHole: { diameter: others.cutter + 0.2, x: 0, y, room },
          }),
        ])
        const plan = planCutting({ part, shop, states, ports: [port], start: 10 })
        for (const step of [...plan.steps.values()].flat()) {
          for (const value of Object.values(step))
            if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true)
          expect(step.time).toBeGreaterThanOrEqual(0)
          expect(step.remarks.join(' ')).not.toMatch(/NaN|Infinity|undefined/)
        }
        for (const { setup, each, batch } of plan.time.values())
          expect(Math.min(setup, each, batch)).toBeGreaterThanOrEqual(0)
        for (const { message } of plan.findings) expect(message).not.toMatch(/NaN|Infinity|undefined/)
      }),
      { numRuns: 300 },
    )
  })
})
