import { type CompoundLayer, cyclesOf } from '../handbook/compound-layer.ts'
import { hardeningWindow } from '../handbook/hardening-processes.ts'
import { nitridedGrade } from '../handbook/nitriding-steels.ts'
import { STRESS_RELIEF_MARGINS, TEMPER_MARGIN } from '../handbook/stress-relief.ts'
import { fromHandbook, fromPart, type Known, known } from '../known.ts'
import type { Part } from '../part/part.ts'
import { habit } from '../shop/habit.ts'
import type { Shop } from '../shop/shop.ts'
import type { Celsius } from '../units.ts'

/** The cycle that the case is planned with: stages, layer and ceiling from one row of the handbook. */
export type CaseCycle = {
  /** Of the hottest stage, the last: what no part may pass. */
  readonly temperature: Known<'°C'>
  /** In turn, with their shares of the time. */
  readonly stages: readonly { readonly temperature: Known<'°C'>; readonly share: number }[]
  /** Of the nitriding processes. */
  readonly layer?: CompoundLayer
}

/**
 * Gas nitrides in two stages where the temper leaves room for the second, with the stress relief between, because that leaves
 * the thinner layer; else in one. A temperature that the part or the works gives is that of the last stage.
 */
export function caseCycle(part: Part, shop: Shop): CaseCycle | undefined {
  const { hardening } = part
  const window = hardening && hardeningWindow(hardening.process)
  if (!window) return undefined
  const rows = cyclesOf(window.process)
  const usual = window.temperature.usual
  const own = ownTemperature(part, shop, usual)
  const single = own ?? known(usual ?? 0, '°C', fromHandbook(window.source))
  const staged = rows.find(({ stages }) => stages.length > 1)
  const last = staged?.stages.at(-1)?.temperature
  if (staged && last !== undefined && (isGiven(own) ? own.value >= last : roomFor(part, last)))
    return cycleIn(staged, isGiven(own) ? own : known(last, '°C', fromHandbook(staged.source)))
  const row = rows.find(({ stages }) => stages.length === 1)
  return row ? cycleIn(row, single) : { temperature: single, stages: [{ temperature: single, share: 1 }] }
}

const cycleIn = (row: CompoundLayer, last: Known<'°C'>): CaseCycle => ({
  temperature: last,
  stages: row.stages.map(({ temperature, share }, index) => ({
    temperature:
      index === row.stages.length - 1 || temperature === undefined
        ? last
        : known(temperature, '°C', fromHandbook(row.source)),
    share,
  })),
  layer: row,
})

const isGiven = (own: Known<'°C'> | undefined): own is Known<'°C'> => own !== undefined && own.from !== 'built in'

/** The part's own; else the works' habit, for a process whose window leaves it open. */
function ownTemperature({ hardening }: Part, shop: Shop, usual: Celsius | undefined): Known<'°C'> | undefined {
  if (hardening?.temperature !== undefined)
    return known(hardening.temperature, '°C', fromPart('/hardening/temperature'))
  return usual === undefined ? habit(shop, 'nitridingTemperature', '°C') : undefined
}

/** Over the stage by the margin of the temper, and by what a stress relief between the two needs. */
function roomFor({ material: { temper, grade } }: Part, last: Celsius): boolean {
  if (nitridedGrade(grade)?.tempered === false) return true
  const { overNitriding, underTemper } = STRESS_RELIEF_MARGINS
  return temper !== undefined && temper >= last + Math.max(TEMPER_MARGIN.usual, overNitriding + underTemper)
}

/** What the cycle leaves on the surface; nothing where the process leaves none. */
export const layerOf = (part: Part, shop: Shop): CompoundLayer | undefined => caseCycle(part, shop)?.layer
