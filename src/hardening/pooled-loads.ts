import { ASSUMED_SPREAD, fewLoadsBand, LOADS_ENOUGH, nextLoadBand } from '../handbook/next-load.ts'
import { studentT } from '../handbook/student-t.ts'
import type { Spread } from '../limits.ts'
import type { MeasuredLoad } from '../shop/record.ts'
import type { Notebook } from '../working.ts'

const squared = (values: readonly number[]): number => values.reduce((sum, value) => sum + value * value, 0)
const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0)

/** Spread within a load, of all loads together. */
function withinLoads(loads: readonly MeasuredLoad[]): { readonly spread: number; readonly freedom: number } {
  const freedom = total(loads.map(({ pieces }) => pieces - 1))
  return { spread: Math.sqrt(total(loads.map(({ pieces, spread }) => (pieces - 1) * spread ** 2)) / freedom), freedom }
}

/**
 * Growth of a whole next load from loads that were measured, with as many pieces as the largest of them. A load is one sample
 * of the furnace: from three on their own spread counts; one or two move the middle of what the handbook expects and never
 * narrow it. `expected` is the handbook's growth of this surface on this wall, least and most read as two sigma.
 */
export function pooledGrowth(
  notebook: Notebook,
  {
    loads,
    expected,
    about,
  }: { readonly loads: readonly MeasuredLoad[]; readonly expected: Spread; readonly about: string },
): Spread {
  const k = loads.length
  const m = Math.max(...loads.map(({ pieces }) => pieces))
  const { spread: s_w, freedom } = withinLoads(loads)
  const t_w = studentT(1 - 0.025 / m, freedom)
  const means = loads.map(({ mean }) => mean)
  if (k >= LOADS_ENOUGH) {
    const middle = total(means) / k
    const s_b = Math.sqrt(squared(means.map(mean => mean - middle)) / (k - 1))
    const h = notebook.use(nextLoadBand, { t_b: studentT(0.975, k - 1), s_b, k, t_w, s_w }, { about })
    return { least: middle - h, nominal: middle, most: middle + h }
  }
  const sigma = (expected.most - expected.least) / 4
  const errors = loads.map(({ pieces, spread }) => spread ** 2 / pieces)
  const apart = Math.max(...means) - Math.min(...means)
  const one = Math.sqrt(ASSUMED_SPREAD ** 2 + Math.max(...errors))
  const tau = apart > 2.8 * one ? apart / Math.SQRT2 : ASSUMED_SPREAD
  const weights = errors.map(error => 1 / (tau ** 2 + error))
  const V = 1 / (1 / sigma ** 2 + total(weights))
  const middle = V * (expected.nominal / sigma ** 2 + total(means.map((mean, index) => mean * (weights[index] ?? 0))))
  const own = notebook.use(fewLoadsBand, { V, tau, t_w, s_w }, { about })
  const h = Math.max(own, (expected.most - expected.least) / 2)
  return { least: middle - h, nominal: middle, most: middle + h }
}
