import type { Plan } from '../plan/plan.ts'
import { type SizeChange, sizeChanges } from './weighed.ts'

/** What one operation has set anew for the new part; operations in the order of the new route. */
export type SetAnew = {
  readonly operation: string
  readonly number: number
  readonly sizes: readonly SizeChange[]
  /** How it is held, or where the jaws grip. */
  readonly holding: boolean
  readonly windows: readonly WindowAnew[]
  /** Programs whose motions differ. */
  readonly programs: readonly string[]
  readonly add: readonly string[]
  readonly leave: readonly string[]
}

/** One window whose setting changes; absent ends where it is new or gone. */
export type WindowAnew = {
  readonly window: string
  readonly changes: readonly {
    readonly what: 'tilt' | 'rotary' | 'Y' | 'X' | 'Z' | 'cutter'
    readonly was?: number
    readonly is?: number
  }[]
}

export type BarAnew = { readonly what: string; readonly was: string; readonly is: string }

/** Below what anybody sets. */
const UNSET = 5e-4

export function setAnew(was: Plan, is: Plan): readonly SetAnew[] {
  const sizes = sizeChanges(was, is).filter(({ weight }) => weight !== 'gone')
  return is.operations.flatMap((operation): readonly SetAnew[] => {
    const { name, number } = operation
    const before = was.operations.find(other => other.name === name)
    const things = (plan: Plan, of: number | undefined) =>
      new Set(plan.kit.filter(item => item.operation === of).map(({ what }) => what))
    const [old, now] = [things(was, before?.number), things(is, number)]
    const mills = is.setUps.some(setUp => setUp.operation === number)
    const one: SetAnew = {
      operation: name,
      number,
      sizes: sizes.filter(size => size.operation === name),
      holding:
        before !== undefined && said(before.holding, before.chuckings) !== said(operation.holding, operation.chuckings),
      windows: mills ? windowsAnew(was, is) : [],
      programs: mills ? programsAnew(was, is) : [],
      add: [...now].filter(what => !old.has(what)),
      leave: [...old].filter(what => !now.has(what)),
    }
    const nothing =
      one.sizes.length + one.windows.length + one.programs.length + one.add.length + one.leave.length === 0
    return nothing && !one.holding && before !== undefined ? [] : [one]
  })
}

/** Lengths to the last digit that means anything, so that an inch written out is the same. */
const said = (...data: readonly unknown[]): string =>
  JSON.stringify(data, (key, value) =>
    key === 'path' ? undefined : typeof value === 'number' ? Number(value.toFixed(6)) : value,
  )

function windowsAnew(was: Plan, is: Plan): readonly WindowAnew[] {
  const settings = (plan: Plan) =>
    new Map(
      plan.ports.flatMap(({ name, windows }) =>
        windows.map(
          (one, index) =>
            [
              windows.length > 1 ? `${name}, window ${index + 1} of ${windows.length}` : name,
              { tilt: one.tilt, rotary: one.rotary, Y: one.crossOffset, X: one.x, Z: one.z, cutter: one.cutter },
            ] as const,
        ),
      ),
    )
  const [old, now] = [settings(was), settings(is)]
  return [...new Set([...now.keys(), ...old.keys()])].flatMap((window): readonly WindowAnew[] => {
    const [before, after] = [old.get(window), now.get(window)]
    const changes = (['tilt', 'rotary', 'Y', 'X', 'Z', 'cutter'] as const).flatMap(what => {
      const [from, to] = [before?.[what], after?.[what]]
      if (from !== undefined && to !== undefined && Math.abs(from - to) < UNSET) return []
      return from === undefined && to === undefined
        ? []
        : [{ what, ...(from !== undefined && { was: from }), ...(to !== undefined && { is: to }) }]
    })
    return changes.length > 0 ? [{ window, changes }] : []
  })
}

/** Programs whose cuts or windows move, by tilt and tool; their names have the revision in them and say nothing. */
function programsAnew(was: Plan, is: Plan): readonly string[] {
  const moved = new Set(is.ports.filter(({ name }) => pathsOf(was, name) !== pathsOf(is, name)).map(({ name }) => name))
  return is.setUps.flatMap(setUp => {
    const before = was.setUps.find(
      ({ work, tilt, tool }) => work === setUp.work && tilt === setUp.tilt && tool === setUp.tool,
    )
    const same = before && said({ ...before, program: '', number: 0 }) === said({ ...setUp, program: '', number: 0 })
    return same && !setUp.windows.some(({ port }) => moved.has(port)) ? [] : [setUp.program]
  })
}

const pathsOf = (plan: Plan, port: string): string =>
  said(
    plan.ports
      .find(({ name }) => name === port)
      ?.windows.map(({ outline, x, crossOffset, z, rotary }) => [outline.cutterPlane, x, crossOffset, z, rotary]),
  )

export function barAnew(was: Plan, is: Plan): readonly BarAnew[] {
  const rows = [
    ['grade', was.material.grade, is.material.grade],
    ['bar', `${was.material.barDiameter} mm`, `${is.material.barDiameter} mm`],
    ['blank', `${was.material.blankLength.toFixed(2)} mm`, `${is.material.blankLength.toFixed(2)} mm`],
    ['bars', String(was.material.bars), String(is.material.bars)],
    ['pieces to start', String(was.batch.start), String(is.batch.start)],
  ] as const
  return rows.flatMap(([what, old, now]) => (old === now ? [] : [{ what, was: old, is: now }]))
}
