import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { leavesLayerToRunOn } from '../handbook/compound-layer.ts'
import { type HardeningWindow, hardeningWindow } from '../handbook/hardening-processes.ts'
import { nitridedGrade } from '../handbook/nitriding-steels.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import type { Shop } from '../shop/shop.ts'
import type { Hour, Millimetre, Vickers } from '../units.ts'
import { DEPTH_STEP, deepestWithin } from './case-limit.ts'
import type { CasePlan } from './case-plan.ts'

/** Depths that are usually ordered: of the grade or of the process, whichever ends first. */
type UsualDepth = {
  readonly least: Millimetre
  readonly most: Millimetre
  readonly of: string
  readonly source: string
}

function usualDepth(
  { material: { grade } }: Pick<Part, 'material'>,
  { process, term, depth, source }: HardeningWindow,
): UsualDepth {
  const listed = term === 'NHD' ? nitridedGrade(grade) : undefined
  const ofGrade = listed?.usualDepth
  return ofGrade && ofGrade.most <= depth.most
    ? { ...ofGrade, of: grade, source: listed.source }
    : { ...depth, of: process, source }
}

/** The same where the window has not been looked up. */
export function usualDepthOf(part: Part): UsualDepth | undefined {
  const window = part.hardening && hardeningWindow(part.hardening.process)
  return window && usualDepth(part, window)
}

/**
 * Deeper or longer than usual: said once, with the limits that bind and what decided the depth. Beyond even with its least
 * figure it is refused, unless the works has figures of its own hardener.
 */
export function beyondUsual({
  part,
  shop,
  window,
  ordered,
  decidedBy,
  time: { nominal: hours },
  leaves,
}: {
  readonly part: Part
  readonly shop: Shop
  readonly window: HardeningWindow
  readonly ordered: CasePlan['ordered']
  readonly decidedBy: string
  readonly time: CasePlan['time']
  /** The hardness expected where most comes off a depth ordered. */
  readonly leaves: (ordered: Millimetre) => Vickers
}): readonly Finding[] {
  const usual = usualDepth(part, window)
  const limit = hourLimit(window, shop)
  const deep = ordered.most > usual.most + 1e-9
  const long = hours > limit
  if (!deep && !long) return []
  const own = shop.reached.some(({ grade }) => grade === part.material.grade)
  const refused = ordered.least > usual.most + 1e-9 && !own
  const [least, most] = [ordered.least, ordered.most].map(depth => fixed(depth, 2))
  const beyond = [
    ...(deep ? [`deeper than the ${usual.least} to ${usual.most} mm usual for ${usual.of}`] : []),
    ...(long ? [`longer than ${fixed(limit, 0)} h`] : []),
  ]
  const within = deepestWithin(window.term, usual.most)
  const left = deep && within > 0 ? leaves(within) : Number.POSITIVE_INFINITY
  const instead =
    left < (part.hardening?.hardness?.least ?? 0)
      ? `; ${fixed(within, 2)} to ${fixed(usual.most, 2)} mm, within the usual, leaves about ${fixed(left, 0)} HV there`
      : ''
  return [
    partFinding({
      part,
      severity: refused ? 'error' : 'warning',
      code: deep ? 'case/deeper-than-usual' : 'case/long-cycle',
      path: '/hardening/depth',
      message: `${least} to ${most} mm${hours > 0 ? `, about ${fixed(hours, hours < 10 ? 1 : 0)} h,` : ''} ${refused ? 'would have to be ordered' : 'is ordered'}: ${beyond.join(', and ')}; decided by ${decidedBy}`,
      hint: `${savedBy(ordered, hours)}: a truer set-up, a finer last soft cut, growth measured on a first article${instead}${refused && leavesLayerToRunOn(window.process) ? '; or ask no more of size, form and roughness than a turned surface has, and use its layer as it comes' : ''}${refused ? '; or ask your hardener, and write what he reaches in the shop file under reached' : ''}`,
    }),
  ]
}

/** A process that has its usual time is dear beyond it; the rest beyond what the works calls long. */
const hourLimit = ({ hours, term }: HardeningWindow, { habits }: Shop): Hour =>
  Math.min(
    hours?.most ?? Number.POSITIVE_INFINITY,
    term === 'NHD' ? habits.nitridingTimeLimit : Number.POSITIVE_INFINITY,
  )

/** Time goes with the square of the depth. */
function savedBy({ least, most }: CasePlan['ordered'], hours: Hour): string {
  const middle = (least + most) / 2
  const saved = hours * (1 - ((middle - DEPTH_STEP) / middle) ** 2)
  return `whatever takes ${fixed(DEPTH_STEP, 2)} mm less off, or asks for as much less, saves ${hours > 0 ? `about ${fixed(saved, saved < 10 ? 1 : 0)} h` : 'as much depth'}`
}
