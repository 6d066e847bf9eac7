import type { Characteristic } from '../../inspection/characteristic.ts'
import type { Plan } from '../../plan/plan.ts'
import { isColumn } from '../work-groups.ts'
import { type CheckRow, checkRow } from './check-rows.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

/** Number, what, gauge, where and how many; what is no column of a matrix is answered on its line. */
export type CharacteristicsView = {
  /** By the gauge, which is picked up once. */
  readonly rows: readonly {
    readonly gauge: string
    readonly sample: string
    /** What is read alike, at one place or at several, once. */
    readonly reads: readonly {
      readonly numbers: string
      readonly name: string
      readonly remark: string
      readonly critical: boolean
      /** Mark behind it. */
      readonly end: string
    }[]
  }[]
  readonly lines: readonly {
    readonly number: string
    readonly name: string
    readonly gauge: string
    readonly remark: string
    readonly judge: string
  }[]
  /** How pieces are laid out, and what must not happen. */
  readonly holdings: readonly string[]
  readonly cautions: readonly string[]
  /** What was read before and is not read again. */
  readonly again: string
}

export function characteristicsView(
  plan: Plan,
  characteristics: readonly Characteristic[],
  figures: PaperFigures,
): CharacteristicsView {
  const inspecting = plan.operations.filter(({ process }) => process === 'inspect')
  const received = plan.operations.filter(
    ({ place, process }) => place === 'outside' && /nitride|harden|relieve|plate/.test(process),
  )
  const again = plan.inspection.characteristics.flatMap(({ number, readAt }) =>
    readAt === undefined ? [] : [`${number} as ${readAt}`],
  )
  return {
    rows: byGauge(characteristics.filter(isColumn).map(one => checkRow(plan, one, figures))),
    lines: characteristics
      .filter(one => !isColumn(one))
      .map(one => {
        const { number, name, gauge, remark, accept, limits, unit } = checkRow(plan, one, figures)
        const judge = accept === DASH ? limits : accept
        return { number, name, gauge, remark, judge: judge === DASH ? '' : `${judge} ${unit}` }
      }),
    holdings: [...new Set(inspecting.map(({ holding }) => holding))],
    // Whoever receives from a furnace or a bath meets what it leaves.
    cautions: [...new Set([...inspecting, ...received].flatMap(({ cautions }) => cautions))],
    again: again.join(', '),
  }
}

function byGauge(checks: readonly CheckRow[]): CharacteristicsView['rows'] {
  const gauges = grouped(checks, ({ gauge, sample }) => `${gauge}|${sample}`)
  return gauges.flatMap(all => {
    const [first] = all
    if (!first) return []
    const alike = grouped(all, ({ remark }) => remark)
    const reads = alike.map((same, index) => ({
      numbers: same.map(({ number }) => number).join(', '),
      name: [...new Set(same.map(({ name }) => name.replace(/, (?:finished|as returned)$/, '')))].join(', '),
      remark: same[0]?.remark ?? '',
      critical: same.some(({ critical }) => critical),
      end: index < alike.length - 1 ? ';' : '',
    }))
    return [{ gauge: first.gauge, sample: first.sample, reads }]
  })
}

function grouped<T>(all: readonly T[], keyOf: (one: T) => string): readonly (readonly T[])[] {
  const groups = new Map<string, T[]>()
  for (const one of all) groups.set(keyOf(one), [...(groups.get(keyOf(one)) ?? []), one])
  return [...groups.values()]
}
