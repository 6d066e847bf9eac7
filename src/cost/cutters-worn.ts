import { cutterCost } from '../handbook/cost.ts'
import { EDGE_LIFE, wornByTime } from '../handbook/cutter-life.ts'
import { fromHandbook, fromShop, told, worked } from '../known.ts'
import type { Money } from '../shop/shop.ts'
import type { Notebook } from '../working.ts'
import type { CostSource } from './cost.ts'
import { ROUTE, TIMES } from './cost-origins.ts'

/** What the tools of an operation cost that wear: by the cutters that its steps say a piece wears out, else by the minutes. */
export function cuttersOf({
  steps,
  money,
  pieces,
  notebook,
  operation,
}: {
  readonly steps: CostSource['operations'][number]['steps']
  readonly money: Money
  readonly pieces: number
  readonly notebook: Notebook
  readonly operation: number
}): number {
  const priced = [...new Set(steps.map(({ tool }) => tool))].filter(tool => Object.hasOwn(money.cutters, tool))
  return priced.reduce((sum, tool) => {
    const { price = 0, life } = money.cutters[tool] ?? {}
    const about = { operation, about: tool }
    const own = steps.filter(step => step.tool === tool)
    const wear = own.flatMap(step => step.wear ?? [])
    const worn =
      wear.length > 0
        ? wear.reduce((all, one) => all + one, 0)
        : notebook.use(
            wornByTime,
            {
              ...told(TIMES, { t: own.reduce((all, { time }) => all + time, 0) }),
              ...(life === undefined
                ? told(fromHandbook('common practice, no source'), { T: EDGE_LIFE })
                : told(fromShop(`tools/${tool}`), { T: life })),
            },
            about,
          )
    const given = {
      ...told(ROUTE, { N_i: pieces }),
      ...told(worked(`${wornByTime.symbol}, ${wornByTime.meaning}`), { n_w: worn }),
      ...told(fromShop(`tools/${tool}`), { P: price }),
    }
    return sum + notebook.use(cutterCost, given, about)
  }, 0)
}
