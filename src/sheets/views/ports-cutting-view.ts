import { angle, fixed, signed } from '../../figures.ts'
import type { Characteristic } from '../../inspection/characteristic.ts'
import type { Plan, PlannedOperation } from '../../plan/plan.ts'
import { checkRow } from './check-rows.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

/** The milling by tool, each with its program, and the boxes of the first piece. */
export type PortsCuttingView = {
  readonly tools: readonly {
    readonly number: string
    readonly tilt: string
    readonly tool: string
    readonly work: string
    readonly stickOut: string
    readonly spindleSpeed: string
    readonly program: string
    /** A line for windows that are cut alike. */
    readonly cuts: readonly string[]
  }[]
  /** What is read of a port, a column each, with all gauges that read it. */
  readonly reads: readonly { readonly what: string; readonly gauges: string }[]
  /** The first piece: a port a row, and below each pair the box for what was read. */
  readonly offs: readonly {
    readonly port: string
    readonly pairs: readonly { readonly number: string; readonly low: string; readonly high: string }[]
  }[]
}

export function portsCuttingView(plan: Plan, operation: PlannedOperation, figures: PaperFigures): PortsCuttingView {
  const here = plan.inspection.characteristics.filter(
    ({ operation: at, unit }) => at === operation.number && unit !== '-',
  )
  const kindOf = ({ name, feature }: Characteristic): string => name.slice(feature.length).replace(/^[\s,]+/, '')
  const kinds = [...new Set(here.map(kindOf))]
  const ports = [...new Set(here.map(({ feature }) => feature))]
  return {
    tools: plan.setUps.map(setUp => ({
      number: String(setUp.number),
      tilt: signed(angle(setUp.tilt, 3)),
      tool: setUp.tool,
      work: setUp.work,
      stickOut: setUp.stickOut === undefined ? DASH : figures.length(setUp.stickOut, 1),
      spindleSpeed: fixed(setUp.spindleSpeed, 0),
      program: setUp.program,
      cuts: cutLines(setUp.windows, figures),
    })),
    reads: kinds.map(what => {
      const own = here.filter(one => kindOf(one) === what)
      return { what, gauges: [...new Set(own.map(({ gauge }) => gauge))].join(' or ') }
    }),
    offs: ports.map(port => ({
      port,
      pairs: kinds.map(kind => {
        const one = here.find(each => each.feature === port && kindOf(each) === kind)
        if (!one) return { number: '', low: '', high: '' }
        const { number, accept, limits } = checkRow(plan, one, figures)
        const [low = '', high = ''] = (accept === DASH ? limits : accept).split('\u00a0/\u00a0')
        return { number, low, high }
      }),
    })),
  }
}

type Windows = Plan['setUps'][number]['windows']

function cutLines(windows: Windows, { length, unit }: PaperFigures): readonly string[] {
  const alike = new Map<string, string[]>()
  for (const { name, cuts } of windows) {
    const words = cuts
      .map(
        ({ kind, passes, depth, feed }) =>
          `${kind} ${passes} × ${length(depth, 2)} ${unit} at ${fixed(feed, 0)} mm/min`,
      )
      .join(', ')
    alike.set(words, [...(alike.get(words) ?? []), name])
  }
  return [...alike].map(([words, names]) => `${names.join('; ')}: ${words}`)
}
