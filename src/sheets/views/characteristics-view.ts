import type { Characteristic } from '../../inspection/characteristic.ts'
import type { Plan } from '../../plan/plan.ts'
import { isColumn } from '../work-groups.ts'
import { checkRow } from './check-rows.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

/** Number, what, gauge, where and how many; what is no column of a matrix is answered on its line. */
export type CharacteristicsView = {
  /** What is read alike, at one place or at several, once. */
  readonly rows: readonly {
    readonly numbers: string
    readonly name: string
    readonly gauge: string
    readonly remark: string
    readonly sample: string
    readonly critical: boolean
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
  const rows = new Map<string, CharacteristicsView['rows'][number]>()
  for (const one of characteristics.filter(isColumn)) {
    const { number, name, gauge, remark, sample, critical } = checkRow(plan, one, figures)
    const whole = name.replace(/, finished$/, '')
    const key = [gauge, remark, sample].join('|')
    const before = rows.get(key)
    const known = before?.name.split('; ') ?? []
    rows.set(key, {
      numbers: before ? `${before.numbers}, ${number}` : number,
      name: [...new Set([...known, whole])].join('; '),
      gauge,
      remark,
      sample,
      critical: critical || (before?.critical ?? false),
    })
  }
  const inspecting = plan.operations.filter(({ process }) => process === 'inspect')
  const received = plan.operations.filter(
    ({ place, process }) => place === 'outside' && /nitride|harden|relieve|plate/.test(process),
  )
  const again = plan.inspection.characteristics.flatMap(({ number, readAt }) =>
    readAt === undefined ? [] : [`${number} as ${readAt}`],
  )
  return {
    rows: [...rows.values()],
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
