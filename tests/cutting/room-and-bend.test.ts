import { describe, expect, it } from 'vitest'
import type { CuttingTask } from '../../src/cutting/cutting-task.ts'
import { drillThrough } from '../../src/cutting/drill-through.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import {
  annealed,
  cut,
  partOf,
  portOf,
  rounded,
  sizeOf,
  stateOf,
  step,
  tube,
  windowOf,
  withoutTools,
} from './hand-made.ts'

describe('a cutter that winds itself down', () => {
  const holeFor = (room: number): number => {
    const small = windowOf({
      entryHole: { diameter: 2.2, x: 0, y: 3.9, room },
      outline: { ...windowOf().outline, cutterPlane: rounded(2.6, 2.6, 1.3) },
    })
    const state = stateOf('mill-ports', tube(60, 54), tube(60, 54, true))
    const { steps } = cut(annealed(), state, withoutTools(BUILT_IN_SHOP, 'drill'), [portOf([small])])
    const remarks = step(steps, 'wind down through the wall').remarks
    return Number(remarks.flatMap(text => /helix to ([\d.]+) mm/.exec(text)?.[1] ?? [])[0])
  }
  // 0.2 mm of wall is left between the hole and the contour: common practice, no source.
  it.each([1.3, 1.35, 1.4, 1.45])('leaves 0.2 mm to the contour with %d mm of room', room => {
    expect(holeFor(room) / 2 + 0.2).toBeCloseTo(room, 6)
  })
  it('winds no wider than it must where there is room, and clears itself where there is none', () => {
    expect(holeFor(3)).toBe(holeFor(1.5))
    expect(holeFor(1.1)).toBeGreaterThan(2)
  })
})

describe('a bar that gives way', () => {
  const warned = (tolerance: number, measure: 'diameter' | 'length' = 'diameter'): string | undefined => {
    const state = stateOf('finish-turn', tube(60, 46), tube(59, 48), [{ ...sizeOf('bore', 48, tolerance), measure }])
    return cut(partOf(), state).findings.find(({ code }) => code === 'cutting/bar-bends')?.message
  }
  const given = (message = ''): number => Number(/gives way ([\d.]+) µm/.exec(message)?.[1])

  // It springs back on both sides of the diameter, so that half the tolerance is reached at twice the bend.
  it('is told of from half the tolerance on the diameter', () => {
    const way = given(warned(0.004)) / 1000
    expect(way).toBeGreaterThan(0)
    expect(warned(2 * way * 0.97)).toContain('over half its tolerance')
    expect(warned(2 * way * 1.03)).toBeUndefined()
  })
  it('gives way on the diameter by twice its bend', () => {
    const state = stateOf('finish-turn', tube(60, 46), tube(59, 48), [sizeOf('bore', 48, 0.004)])
    const { deflection = 0 } = step(cut(partOf(), state).steps, 'finish bore')
    expect(deflection).toBeGreaterThan(0)
    expect(given(warned(0.004)) / deflection).toBeGreaterThan(1.97)
    expect(given(warned(0.004)) / deflection).toBeLessThan(2.03)
  })
  it('is held against the tolerance of the diameter, not of a length', () => {
    expect(warned(0.004, 'length')).toBeUndefined()
  })
})

it('names the drill that is wanted: any up to a size, or one between two', () => {
  const said = (least: number, most: number): string => {
    const messages: string[] = []
    const task = {
      shop: withoutTools(BUILT_IN_SHOP, 'drill'),
      operation: { number: 10 },
      report: ({ message }: { readonly message: string }) => messages.push(message),
    }
    expect(drillThrough(task as unknown as CuttingTask, { least, most }, 900)).toBeUndefined()
    return messages.join()
  }
  expect(said(0, 8.5)).toBe('no drill that is sold goes 900 mm deep at 8.5 mm or less')
  expect(said(8.4, 8.5)).toBe('no drill that is sold goes 900 mm deep at 8.4 to 8.5 mm')
})
