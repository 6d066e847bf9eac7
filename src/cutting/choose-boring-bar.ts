import { ELASTIC_MODULUS, LARGEST_BAR_IN_BORE, LONGEST_OVERHANG } from '../handbook/boring-bar.ts'
import { handOrGet, isOnHand } from '../shop/tools-to-get.ts'
import type { Millimetre } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'
import { figure } from './figure.ts'
import { sayToGet } from './to-get.ts'

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

/**
 * The thickest bar that leaves room for chips and reaches the band from the nearer face; roughing likes a larger nose. A plain
 * bar from both ends is sooner taken than a damped one that is bought for it.
 */
export function chooseBoringBar(
  task: CuttingTask,
  bore: Millimetre,
  depth: Millimetre,
  nose: 'largest' | 'smallest',
): StandingBar | undefined {
  const whole = depth + BEYOND
  const half = depth / 2 + BEYOND
  const standing = (out: Millimetre, bought: 'plain' | 'damped') =>
    handOrGet(
      task.shop,
      'boring bar',
      bars =>
        bars
          .filter(({ diameter, reach }) => diameter <= LARGEST_BAR_IN_BORE * bore + 1e-9 && reach >= out - 1e-9)
          .filter(
            ({ name, material }) => isOnHand(task.shop, name) || (material === 'damped') === (bought === 'damped'),
          )
          .toSorted(
            (a, b) => b.diameter - a.diameter || (nose === 'largest' ? -1 : 1) * (a.noseRadius - b.noseRadius),
          )[0],
    )
  const plain = standing(whole, 'plain')
  const halfWay = plain ? undefined : standing(half, 'plain')
  const through = plain ?? (halfWay ? undefined : standing(whole, 'damped'))
  const bar = through ?? halfWay ?? standing(half, 'damped')
  const overhang = through ? whole : half
  if (!bar) {
    task.report({
      code: 'cutting/no-boring-bar',
      severity: 'error',
      message: `no boring bar that is sold goes into a bore of ${figure(bore)} mm and reaches ${figure(overhang)} mm, half-way from either end: it may be at most ${figure(LARGEST_BAR_IN_BORE * bore)} mm thick`,
      hint: 'have it bored or gun drilled by agreement: even a damped bar reaches ten diameters only',
      path: '/body/bore',
    })
    return undefined
  }
  sayToGet(task, bar, `for a bore of ${figure(bore)} mm, ${figure(overhang)} mm out`)
  if (!through) {
    task.report({
      code: 'cutting/from-both-ends',
      severity: 'warning',
      message: `a bore of ${figure(bore)} mm is bored from both ends, ${figure(overhang)} mm out each time: no bar that goes in stands out ${figure(whole)} mm`,
      hint: 'clock the part true by what was bored first; a step of a few hundredths may stay in the middle',
      path: '/body/bore',
    })
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
