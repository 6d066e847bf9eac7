import type { Step } from '../cutting/step.ts'
import type { Characteristic } from '../inspection/characteristic.ts'
import { GAUGES_TO_GET } from '../shop/gauges-to-get.ts'
import type { Shop } from '../shop/shop.ts'
import { namedToGet } from '../shop/tools-to-get.ts'

/** One thing to have at the machine or the bench before an operation begins. */
export type KitItem = {
  readonly what: string
  /** The kind of tool, or what it measures: `drill`, `bore gauge`, `hand tool`. */
  readonly kind: string
  readonly operation: number
  /** For the batch. */
  readonly quantity: number
  /** On hand by the shop file, or to be bought, borrowed or hired. */
  readonly have: boolean
}

type Made = { readonly number: number; readonly place: 'house' | 'outside'; readonly steps: readonly Step[] }

/** What every operation of the house needs: the tools of its steps, and the gauges of what is measured at it. */
export function planKit({
  shop,
  operations,
  characteristics,
}: {
  readonly shop: Pick<Shop, 'tools' | 'gauges' | 'machines'>
  readonly operations: readonly Made[]
  readonly characteristics: readonly Characteristic[]
}): readonly KitItem[] {
  return operations
    .filter(({ place }) => place === 'house')
    .flatMap(operation => [
      ...toolsAt(shop, operation),
      ...gaugesAt(
        shop,
        operation.number,
        characteristics.filter(one => one.operation === operation.number),
      ),
    ])
}

/** So does a step call a tool that the works has none of. */
const TO_GET = ', to get'

function toolsAt({ tools, machines }: Pick<Shop, 'tools' | 'machines'>, { number, steps }: Made): readonly KitItem[] {
  const works = new Set(machines.flatMap(({ name, workCentre }) => [name, workCentre]))
  const names = [...new Set(steps.map(({ tool }) => tool))].filter(name => name !== 'gauges' && !works.has(name))
  return names.map(what => {
    const own = tools.find(({ name }) => name === what)
    const kind = own?.kind ?? namedToGet(what)?.kind
    const quantity = Math.max(1, ...steps.map(({ tool, wornOut = 1 }) => (tool === what ? wornOut : 1)))
    // What stands in no list is a scraper or a washer: a bench has it.
    return {
      what,
      kind: kind ?? 'hand tool',
      operation: number,
      quantity,
      have: own !== undefined || (kind === undefined && !what.endsWith(TO_GET)),
    }
  })
}

function gaugesAt(
  { gauges }: Pick<Shop, 'gauges'>,
  operation: number,
  characteristics: readonly Characteristic[],
): readonly KitItem[] {
  const names = [...new Set(characteristics.map(({ gauge }) => gauge))]
  return names.flatMap(what => {
    const own = gauges.find(({ name }) => name === what)
    const known = own ?? GAUGES_TO_GET.find(({ name }) => name === what)
    return known ? [{ what, kind: `${known.kind} gauge`, operation, quantity: 1, have: own !== undefined }] : []
  })
}
