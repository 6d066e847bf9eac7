import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { NARROW_BAR } from '../handbook/hardening-growth.ts'
import {
  HOLLOW_PIN_SHARE,
  QUENCHED_RING,
  type QuenchWay,
  quenchOvality,
  SOLID_PIN_OVALITY,
} from '../handbook/quench-ovality.ts'
import { QUENCHED_SET_UP, QUENCHED_SKIN, quenchedStock, throughHardened } from '../handbook/through-hardening.ts'
import type { Spread } from '../limits.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import { hardensThrough } from '../part/takes-case.ts'
import {
  ASKED,
  carburisedQuench,
  hasNarrowBar,
  holdingTool,
  SHARE_OF_STOCK,
  type WayChosen,
} from '../route/carburised-quench.ts'
import type { Millimetre } from '../units.ts'
import { thinnestWall } from '../wall.ts'
import { quenchedShare } from './quenched-growth.ts'

/** How a part is quenched, and how round that leaves it. */
export type Quench = {
  readonly way: QuenchWay
  /** In the words of the order. */
  readonly called: string
  readonly why: string
  /** Largest less smallest diameter as it comes back: half, expected, twice. */
  readonly ovality: Spread
  readonly source: string
}

const QUENCHES: Readonly<Record<QuenchWay, string>> = {
  free: 'free in oil, hung or stood on end',
  hot: 'in hot oil or a salt bath at 160 to 200 °C, stood on end',
  gas: 'in gas or air, stood on end',
  press: 'in a press, faces and an expanding segment in the bore',
  plug: 'on a plug in the bore',
}

/** A ring thinner than this, outside over wall, does not come round from a free quench. Common practice, no source. */
const THIN_RING = 12
const SOURCE = 'estimate: ovality goes with D²/t; half of it to twice'

/** As the part file asks; else free in oil where the stock bears it, hot oil next, a press or a plug for a thin or ported ring. */
export function chooseQuench(part: Part): Quench | undefined {
  const carburised = carburisedQuench(part)
  if (carburised) return quenched(carburised)
  const row = hardensThrough(part) ? throughHardened(part.material.grade) : undefined
  if (!row) return undefined
  if (part.bore.length === 0) return made('free', 'a solid pin, hung', SOLID_PIN_OVALITY)
  const D: Millimetre = Math.max(...part.outside.map(({ size }) => size.nominal))
  const t = Math.max(0.1, thinnestWall(part))
  const share = part.kind === 'pin' ? HOLLOW_PIN_SHARE : 1
  const oval = (way: QuenchWay) => quenchOvality.value({ k: share * QUENCHED_RING[way], D, t })
  const asked = part.hardening?.quench
  if (asked) return made(asked, ASKED, oval(asked))
  if (part.ports.length > 0 || D / t > THIN_RING) {
    const narrow = hasNarrowBar(part)
    const way = holdingTool(part)
    const thin = `outside over wall ${fixed(D / t, 1)}`
    const why = part.ports.length > 0 ? `ported, ${thin}` : `${thin}, over ${THIN_RING}`
    const bars = narrow ? `; a bar under ${NARROW_BAR} mm bears no plug` : ''
    return made(way, `${why}: free in oil it would come ${fixed(oval('free'), 2)} mm oval${bars}`, oval(way))
  }
  if (row.medium.startsWith('gas')) return made('gas', 'the grade hardens in gas or air', oval('gas'))
  const bears = SHARE_OF_STOCK * 2 * stockFor(part, oval('free'))
  const told = `free in oil it comes ${fixed(oval('free'), 3)} mm oval, and a third of the stock is ${fixed(bears, 3)}`
  return oval('free') <= bears ? made('free', told, oval('free')) : made('hot', told, oval('hot'))

  function made(way: QuenchWay, why: string, ovality: Millimetre): Quench {
    return quenched({ way, why, ovality })
  }
}

const quenched = ({ way, why, ovality }: WayChosen): Quench => ({
  way,
  called: QUENCHES[way],
  why,
  ovality: { least: ovality / 2, nominal: ovality, most: 2 * ovality },
  source: SOURCE,
})

/** A quench asked for that the part does not bear. */
export function quenchFindings(part: Part): readonly Finding[] {
  const way = part.hardening?.quench
  const found = (severity: 'error' | 'warning', message: string, hint: string): readonly Finding[] => [
    partFinding({
      part,
      severity,
      code: severity === 'error' ? 'case/process-refused' : 'case/process-limited',
      path: '/hardening/quench',
      message,
      hint,
    }),
  ]
  if (way !== 'press' && way !== 'plug') return []
  if (part.bore.length === 0)
    return found(
      'error',
      `a solid pin is asked to be quenched ${QUENCHES[way]}: it has no bore`,
      'leave quench out: it is hung',
    )
  if (way === 'plug' && part.bore.length > 1)
    return found(
      'error',
      'a bore of several bands is asked to be quenched on a plug, which fits one diameter',
      'ask for a press, or leave quench out',
    )
  if (way === 'plug' && hasNarrowBar(part))
    return found(
      'warning',
      `a bar between windows under ${NARROW_BAR} mm wide may not bear a plug (estimate)`,
      'ask the maker of the plug before it is ordered, or ask for a press',
    )
  return []
}

/** Per side, as a part that is quenched so is usually left. */
function stockFor(part: Part, o: Millimetre): Millimetre {
  const D = Math.max(...part.outside.map(({ size }) => size.nominal))
  const { least, nominal } = quenchedShare(part)?.outside ?? { least: 0, nominal: 0 }
  const { eccentricity: e, bow } = QUENCHED_SET_UP
  const b = (bow * part.length.nominal) / 100
  return quenchedStock.value({ e, o, b, skin: QUENCHED_SKIN, u: (D * (nominal - least)) / 2 })
}
