import type { Plan } from '../../plan/plan.ts'

export type WorkingsView = {
  readonly groups: readonly {
    readonly title: string
    readonly workings: readonly {
      readonly symbol: string
      readonly meaning: string
      readonly value: string
      readonly expression: string
      readonly source: string
    }[]
  }[]
}

/** Every figure with its numbers and its source, by operation and by what it is about, as the planner came to them. */
export function workingsView({ workings, operations }: Plan): WorkingsView {
  const groups = new Map<string, WorkingsView['groups'][number]['workings'][number][]>()
  for (const { operation, about, symbol, meaning, value, unit, expression, source } of workings) {
    const name = operations.find(({ number }) => number === operation)?.name
    const title = [operation === undefined ? '' : `${operation} ${name ?? ''}`.trim(), about ?? ''].filter(text => text !== '')
    const key = title.join(': ') || 'the batch'
    const group = groups.get(key) ?? []
    groups.set(key, group)
    group.push({ symbol, meaning, value: `${short(value)} ${unit}`.trim(), expression, source })
  }
  return { groups: [...groups].map(([title, workings]) => ({ title, workings })) }
}

/** Six figures: enough to check the sum by hand, and no gauge is read by them. */
const short = (value: number): string => String(Number(value.toPrecision(6)))
