import { describe, expect, it } from 'vitest'
import { planCutting } from '../../src/cutting/plan-cutting.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { demo } from './demo.ts'

const NO_SPINDLE = new Set(['saw', 'bench', 'inspection bench'])

describe.each(['OX-098-21', 'OX-112-03'] as const)('cutting plan of the demo part %s', name => {
  const { part, states, ports, start } = demo(name)
  const plan = planCutting({ part, shop: BUILT_IN_SHOP, states, ports, start })

  it('has steps and time for all that the house does, and none for what goes outside', () => {
    for (const { operation } of states) {
      const steps = plan.steps.get(operation.number) ?? []
      const time = plan.time.get(operation.number)
      if (operation.place === 'outside') {
        expect(steps).toEqual([])
        expect(time).toEqual({ setup: 0, each: 0, batch: 0 })
      } else {
        expect(steps.length, operation.name).toBeGreaterThan(0)
        expect(time?.each).toBeGreaterThan(0)
      }
    }
  })

  it('keeps every spindle and wheel under the limit of its machine', () => {
    for (const { operation } of states) {
      const machine = BUILT_IN_SHOP.machines.find(({ workCentre }) => workCentre === operation.workCentre)
      for (const { spindleSpeed, wheel } of plan.steps.get(operation.number) ?? []) {
        expect(spindleSpeed).toBeLessThanOrEqual(machine?.speedLimit ?? 0)
        expect(wheel?.spindleSpeed ?? 0).toBeLessThanOrEqual(machine?.speedLimit ?? 0)
      }
    }
  })

  it('keeps every cut within the power of its machine', () => {
    for (const { operation } of states) {
      const machine = BUILT_IN_SHOP.machines.find(({ workCentre }) => workCentre === operation.workCentre)
      for (const { power = 0 } of plan.steps.get(operation.number) ?? []) {
        expect(power).toBeLessThanOrEqual(0.8 * (machine?.power ?? 0) + 1e-9)
      }
    }
  })

  it('gives positive figures wherever something turns, and calls them starting values', () => {
    for (const { operation } of states.filter(state => !NO_SPINDLE.has(state.operation.workCentre))) {
      for (const step of plan.steps.get(operation.number) ?? []) {
        expect(step.time, step.action).toBeGreaterThan(0)
        if (step.spindleSpeed === 0) continue
        expect(step.feed, step.action).toBeGreaterThan(0)
        expect(step.tableFeed, step.action).toBeGreaterThan(0)
        expect(step.depth, step.action).toBeGreaterThan(0)
        expect(Number.isInteger(step.passes) && step.passes >= 1, step.action).toBe(true)
        if (!step.action.startsWith('spring')) expect(step.remarks[0], step.action).toMatch(/^start at/)
      }
    }
  })

  it('adds up: set-up, and every piece that is started', () => {
    for (const { setup, each, batch } of plan.time.values()) expect(batch).toBeCloseTo(setup + start * each, 9)
  })

  it('loads, cuts and changes tools in the time of a piece', () => {
    for (const { operation } of states) {
      const steps = plan.steps.get(operation.number) ?? []
      const handling = BUILT_IN_SHOP.machines.find(m => m.workCentre === operation.workCentre)?.handling ?? 0
      const cutting = steps.reduce((sum, { time }) => sum + time, 0)
      if (steps.length > 0) expect(plan.time.get(operation.number)?.each).toBeGreaterThanOrEqual(handling + cutting)
    }
  })

  it('takes the stock that the sizes leave: passes times depth is what comes off each side', () => {
    for (const { operation, before, after } of states.filter(({ operation: o }) => o.purpose === 'rough-turn')) {
      const seat = after.outside.at(-1)
      const bar = before.outside[0]
      const rough = plan.steps.get(operation.number)?.find(({ action }) => action === 'rough seat')
      expect((rough?.depth ?? 0) * (rough?.passes ?? 0)).toBeCloseTo(
        ((bar?.diameter ?? 0) - (seat?.diameter ?? 0)) / 2,
        9,
      )
    }
  })

  it('finds no error in it', () => {
    expect(plan.findings.filter(({ severity }) => severity === 'error')).toEqual([])
  })

  it('gives the same for the same', () => {
    expect(JSON.stringify(planCutting({ part, shop: BUILT_IN_SHOP, states, ports, start }))).toBe(JSON.stringify(plan))
  })

  it('keeps a working of every figure, each of an operation or of the material', () => {
    expect(plan.workings.length).toBeGreaterThan(50)
    for (const { operation, about, value } of plan.workings) {
      expect(operation !== undefined || about === 'material').toBe(true)
      expect(Number.isFinite(value)).toBe(true)
    }
  })
})

describe('the ported demo liner', () => {
  const { part, states, ports, start } = demo('OX-098-21')
  const plan = planCutting({ part, shop: BUILT_IN_SHOP, states, ports, start })
  const milling = states.find(({ operation }) => operation.purpose === 'mill-ports')?.operation.number ?? 0
  const steps = plan.steps.get(milling) ?? []

  it('goes down into every window, roughs, finishes and springs it', () => {
    const windows = ports.flatMap(port => port.windows).length
    for (const verb of ['rough', 'cut through', 'finish(?! the corners)', 'spring pass(?! in the corners)']) {
      expect(steps.filter(({ action }) => new RegExp(`^${verb} `).test(action))).toHaveLength(windows)
    }
    const down = steps.filter(
      ({ action, remarks }) =>
        action.startsWith('drill the entry hole') ||
        (action.startsWith('rough') && remarks.some(text => text.endsWith('along the slot, no entry hole'))),
    )
    expect(down).toHaveLength(windows)
  })

  // Both are cut climbing, so one dives where the other rises: they differ in time and in where a ramp ends, in a corner that is short by most.
  it('cuts the two of a pair alike', () => {
    const without = (name: string) =>
      steps
        .filter(({ feature }) => feature === name)
        .map(({ action: _, feature: __, remarks: ___, window: ____, ...figures }) => figures)
    const [right, left] = [without('main transfer'), without('main transfer, mirrored')]
    expect(right.length).toBeGreaterThan(3)
    for (const [index, figures] of right.entries()) {
      for (const [key, value] of Object.entries(figures)) {
        const other = left[index]?.[key as keyof typeof figures]
        if (key === 'time') expect(Math.abs(Number(other) / Number(value) - 1)).toBeLessThan(0.1)
        else if (typeof value === 'number') expect(Math.abs(Number(other) / value - 1)).toBeLessThan(0.01)
      }
    }
  })

  it('goes through once for each tilt: load and set again', () => {
    const tilts = new Set(ports.flatMap(port => port.windows.map(({ tilt }) => tilt))).size
    expect(tilts).toBe(3)
    const machine = BUILT_IN_SHOP.machines.find(({ workCentre }) => workCentre === 'mill')
    expect(plan.time.get(milling)?.setup).toBe((machine?.setup ?? 0) + tilts * 8)
  })

  it('leaves every cutter its margin against breaking', () => {
    for (const { breakageMargin, action } of steps) {
      if (breakageMargin !== undefined) expect(breakageMargin, action).toBeGreaterThanOrEqual(3)
    }
  })

  it('plans the milling of all five windows in under an hour, common practice, no source', () => {
    const each = plan.time.get(milling)?.each ?? 0
    expect(each).toBeGreaterThan(15)
    expect(each).toBeLessThan(60)
  })
})
