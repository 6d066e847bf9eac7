import { ELASTIC_MODULUS, LARGEST_BAR_IN_BORE, LONGEST_OVERHANG } from '../handbook/boring-bar.ts'
import { toolsOf } from '../shop/tool.ts'
import type { Millimetre } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'
import { figure } from './figure.ts'

/** A bar as far out as the cut asks for. */
export type StandingBar = {
  readonly name: string
  readonly diameter: Millimetre
  readonly overhang: Millimetre
  readonly noseRadius: Millimetre
  readonly elasticModulus: number
}

/** The bar ends this far beyond the band it bores. Common practice, no source. */
const BEYOND: Millimetre = 5

/** The thickest bar that leaves room for chips and reaches the band from the nearer face; roughing likes a larger nose. */
export function chooseBoringBar(
  task: CuttingTask,
  bore: Millimetre,
  depth: Millimetre,
  nose: 'largest' | 'smallest',
): StandingBar | undefined {
  const overhang = depth + BEYOND
  const [bar] = toolsOf(task.shop, 'boring bar')
    .filter(({ diameter, reach }) => diameter <= LARGEST_BAR_IN_BORE * bore + 1e-9 && reach >= overhang - 1e-9)
    .toSorted((a, b) => b.diameter - a.diameter || (nose === 'largest' ? -1 : 1) * (a.noseRadius - b.noseRadius))
  if (!bar) {
    task.report({
      code: 'cutting/no-boring-bar',
      severity: 'error',
      message: `no boring bar on hand goes into a bore of ${figure(bore)} mm and reaches ${figure(overhang)} mm: it may be at most ${figure(LARGEST_BAR_IN_BORE * bore)} mm thick`,
      hint: 'list one under `tools:` in the shop file',
      path: '/body/bore',
    })
    return undefined
  }
  const { material } = bar
  const most = LONGEST_OVERHANG[material]
  if (overhang > most * bar.diameter + 1e-9) {
    task.report({
      code: 'cutting/bar-overhang',
      severity: 'warning',
      message: `${bar.name} stands out ${figure(overhang)} mm, ${figure(overhang / bar.diameter)} diameters; ${most} is the most`,
      hint: 'take a carbide or damped bar, or bore from both ends',
      path: '/body/bore',
    })
  }
  return {
    name: bar.name,
    diameter: bar.diameter,
    overhang,
    noseRadius: bar.noseRadius,
    elasticModulus: ELASTIC_MODULUS[material],
  }
}
