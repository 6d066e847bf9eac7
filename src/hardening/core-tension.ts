import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { CORE_TENSION_LIMITS, coreTension, yieldOfCore } from '../handbook/wall-stretch.ts'
import { type Known, told, worked } from '../known.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import type { Shop } from '../shop/shop.ts'
import { type Notebook, SCRATCH } from '../working.ts'
import { layerOf } from './case-cycle.ts'
import { type DepthRange, meanCaseStress } from './nitriding-growth.ts'
import { wallsAlong } from './walls-along.ts'

/** Whether the core bears what balances the case, wherever the wall is thinnest for its case. A quenched part has no such balance. */
export function tensionFindings({
  notebook,
  part,
  shop,
  core,
  depth,
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly shop: Shop
  readonly core: Known<'HV'>
  readonly depth: DepthRange
}): readonly Finding[] {
  const stress = layerOf(part, shop) && meanCaseStress(SCRATCH, part, shop)
  if (!stress || part.bore.length === 0) return []
  const walls = wallsAlong(part)
    .filter(({ treated }) => treated.outside || treated.bore)
    .map(section => ({
      section,
      given: {
        s_0: stress.nominal,
        h_o: section.treated.outside ? depth.most : 0,
        h_i: section.treated.bore ? depth.most : 0,
        t: section.t,
      },
    }))
    .toSorted((a, b) => coreTension.value(b.given) - coreTension.value(a.given))
  const [worst] = walls
  if (!worst) return []
  const { s_0, h_o, h_i, t } = worst.given
  const about = { about: `wall of ${worst.section.outside.name}` }
  const tension = notebook.use(
    coreTension,
    {
      ...told(stress, { s_0 }),
      ...told(worked('most of the depth ordered, on a side that takes case'), { h_o, h_i }),
      ...told(worked('wall by its nominal sizes'), { t }),
    },
    about,
  )
  const yields = notebook.use(yieldOfCore, { H_c: core }, about)
  const share = tension / yields
  const { warn, refuse } = CORE_TENSION_LIMITS
  if (share <= warn) return []
  const over = share > refuse
  return [
    partFinding({
      part,
      severity: over ? 'error' : 'warning',
      code: 'case/core-tension',
      path: '/hardening/depth',
      message: `the core of ${worst.section.outside.name}, ${fixed(worst.section.t, 2)} mm of wall, bears ${fixed(tension, 0)} MPa of tension against the case, ${fixed(100 * share, 0)} % of its yield of about ${fixed(yields, 0)} MPa; ${over ? `over ${fixed(100 * refuse, 0)} % it creeps while it is nitrided, and the figures of growth do not hold` : `over ${fixed(100 * warn, 0)} % it may creep while it is nitrided (estimate)`}`,
      hint: 'ask for less depth, make the wall thicker there, or nitride a first article and measure it',
    }),
  ]
}
