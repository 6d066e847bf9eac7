import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { DEEPEST_CASE, LEAST_CASE_LEFT, LEAST_CASE_UNDER_LAYER, REMOVAL_SHARE } from '../handbook/case-limits.ts'
import { DEPTH_TOLERANCE_SOURCE, upperTolerance } from '../handbook/case-tolerance.ts'
import { leavesLayerToRunOn } from '../handbook/compound-layer.ts'
import { depthForShare, depthToOrder } from '../handbook/grinding-off-case.ts'
import { depthDefinition, type HardeningWindow, hardeningWindow } from '../handbook/hardening-processes.ts'
import { NITRIDED_PIN, PIN_CASE_SOURCE, pinCase } from '../handbook/pin-case.ts'
import { fromHandbook, fromPart, type Known, known, told } from '../known.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import type { Millimetre, Vickers } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { CaseFigures } from './case-figures.ts'
import { DEPTH_STEP } from './case-limit.ts'
import { TAKEN } from './case-origins.ts'
import { hardEnough } from './hard-enough.ts'
import { type Removal, worstOf } from './removal.ts'

const ESTIMATE = fromHandbook('common practice/estimate')

/** Of a case whose depth is not asked, before any of it is reckoned. Estimate. */
const DEPTH_AT_FIRST: Millimetre = 0.2

/**
 * The depth that stock and order are settled from: as asked, yet no deeper than may be ordered, so that a depth that no process
 * reaches is refused by `orderedDepth` and no growth is reckoned of it.
 */
export function depthAtFirst({ hardening }: Part): Millimetre {
  const window = hardening && hardeningWindow(hardening.process)
  return Math.min(hardening?.depth?.least ?? DEPTH_AT_FIRST, window ? DEEPEST_CASE[window.term].depth : Infinity)
}

/** Bounds of the least figure of an order. */
export type DepthBounds = { readonly least: Millimetre; readonly most: Millimetre }

export type OrderedDepth = {
  readonly asked: Known<'mm'>
  readonly ordered: { readonly least: Millimetre; readonly most: Millimetre }
  /** The need that is deepest, in words. */
  readonly decidedBy: string
  readonly findings: readonly Finding[]
}

/**
 * Depth to order: the depth asked is left, the hardness asked is held by the expected model, and no more than half of the
 * case goes, all where most is taken off. No minus side. Nothing slides on a face: it is treated, and no depth is asked of it.
 */
export function orderedDepth({
  notebook,
  part,
  window,
  figures,
  removal,
  wall,
  between,
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly window: HardeningWindow
  readonly figures: CaseFigures
  readonly removal: readonly Removal[]
  readonly wall: Millimetre
  readonly between?: DepthBounds | undefined
}): OrderedDepth | { readonly refused: Finding } {
  const worst = worstOf(removal)
  const s = worst?.most ?? 0
  const { asked, findings } = depthAsked(part, window, wall)
  if (asked === undefined) return { refused: depthMissing(part, window) }
  const { core, limit, surface } = figures
  if (!(core.value < limit && limit < surface.usual)) return { refused: noRise(part, window, figures) }
  const about = { about: 'case' }
  const off = worst === undefined ? '' : `, with up to ${fixed(s, 3)} mm a side off ${worst.surface}`
  const reasons = [
    {
      why: `${fixed(asked.value, 2)} mm to be left${off}`,
      depth: notebook.use(depthToOrder, { N_f: asked, ...told(TAKEN, { s_max: s }) }, about),
    },
    {
      why: `no more than ${REMOVAL_SHARE.refuse * 100} % of the case taken off${off}`,
      depth: notebook.use(
        depthForShare,
        { ...told(TAKEN, { s_max: s }), ...told(ESTIMATE, { f: REMOVAL_SHARE.refuse }) },
        about,
      ),
    },
  ]
  const hardness = part.hardening?.hardness?.least
  if (hardness !== undefined && hardness > figures.core.value) {
    if (hardness >= figures.surface.usual) return { refused: outOfReach(part, figures, hardness) }
    if (s > 0)
      reasons.push({
        why: `${fixed(hardness, 0)} HV to be left${off}`,
        depth: hardEnough({ notebook, figures, hardness, s }),
      })
  }
  const deciding = reasons.reduce((deepest, reason) => (reason.depth > deepest.depth ? reason : deepest))
  const least = Math.round(Math.ceil(deciding.depth / DEPTH_STEP - 1e-6)) * DEPTH_STEP
  const bounded = Math.min(Math.max(Number(least.toFixed(2)), between?.least ?? 0), between?.most ?? Infinity)
  const rounded = Math.max(DEPTH_STEP, bounded)
  if (rounded > DEEPEST_CASE[window.term].depth) {
    return {
      refused: partFinding({
        part,
        severity: 'error',
        code: 'case/too-deep',
        path: '/hardening/depth',
        message: `a case of ${fixed(rounded, 2)} mm is needed for ${deciding.why}; ${window.process} is ordered to ${DEEPEST_CASE[window.term].depth} mm at most`,
        hint: `take off less after hardening, or ask for less depth or hardness${window.term === 'NHD' ? ', or choose a steel that nitrides harder' : ''}`,
      }),
    }
  }
  const upper = upperTolerance(window.term, rounded)
  notebook.note({
    ...about,
    symbol: 'N_order',
    meaning: `depth ordered, decided by ${deciding.why}, rounded up to ${DEPTH_STEP}`,
    value: rounded,
    unit: 'mm',
    expression: `max(${reasons.map(({ depth }) => fixed(depth, 4)).join(', ')}), +${upper} -0`,
    source: `derived: the deepest of the needs; upper deviation ${DEPTH_TOLERANCE_SOURCE}`,
  })
  return {
    asked,
    ordered: { least: rounded, most: Number((rounded + upper).toFixed(3)) },
    decidedBy: deciding.why,
    findings,
  }
}

type Asked = { readonly asked?: Known<'mm'>; readonly findings: readonly Finding[] }

/** The drawing's depth; or what a running surface, or a pin of that wall, is usually left with. */
function depthAsked(part: Part, window: HardeningWindow, wall: Millimetre): Asked {
  const asked = part.hardening?.depth?.least
  if (asked !== undefined) return { asked: known(asked, 'mm', fromPart('/hardening/depth')), findings: [] }
  const usual = usualDepth(part, window, wall)
  if (!usual) return { findings: [] }
  return {
    asked: known(usual.depth, 'mm', fromHandbook(usual.source)),
    findings: [
      partFinding({
        part,
        severity: 'note',
        code: 'case/depth-not-asked',
        path: '/hardening',
        message: `no depth is asked for: ${usual.depth} mm left is planned (${usual.source})`,
        hint: 'write depth: min … as it must be left after finishing',
      }),
    ],
  }
}

function usualDepth(
  { kind }: Part,
  { term, process }: HardeningWindow,
  wall: Millimetre,
): { readonly depth: Millimetre; readonly source: string } | undefined {
  const pin = kind === 'pin'
  if (term === 'NHD') {
    return pin
      ? { depth: NITRIDED_PIN.outside, source: PIN_CASE_SOURCE }
      : {
          depth: leavesLayerToRunOn(process) ? LEAST_CASE_UNDER_LAYER : LEAST_CASE_LEFT,
          source: 'estimate for a running surface, 0.10 to 0.25',
        }
  }
  const depth = pin && term === 'CHD' ? pinCase(wall)?.outside : undefined
  return depth === undefined ? undefined : { depth, source: PIN_CASE_SOURCE }
}

function depthMissing(part: Part, { process, term }: HardeningWindow): Finding {
  return partFinding({
    part,
    severity: 'error',
    code: 'case/depth-not-asked',
    path: '/hardening',
    message: `${process} without a depth: ${depthDefinition(term)} decides the stock and the order`,
    hint: 'write depth: min … as it must be left after finishing',
  })
}

/**
 * A depth of hardness ends between core and surface; where the bar is about as hard as the case there is no such place. An
 * SHD ends at a share of the hardness asked, so that the hardness moves it; the other depths end where the bar or the rule says.
 */
function noRise(part: Part, { process, term }: HardeningWindow, { surface, core, limit }: CaseFigures): Finding {
  const byHardness = limit <= core.value ? 'ask for more hardness, or start from softer bar' : 'ask for less hardness'
  return partFinding({
    part,
    severity: 'error',
    code: 'case/hardness-out-of-reach',
    path: term === 'SHD' ? '/hardening/hardness' : '/material/hardness',
    message: `${process} of ${part.material.grade}: the ${term} would end at ${fixed(limit, 0)} HV, which is not between the core's ${fixed(core.value, 0)} HV and the surface's ${fixed(surface.usual, 0)} HV`,
    hint: term === 'SHD' ? byHardness : 'start from softer bar, or choose a steel that hardens further',
  })
}

function outOfReach(part: Part, { surface }: CaseFigures, hardness: Vickers): Finding {
  const range = surface.least === surface.most ? '' : `, ${surface.least} to ${surface.most}`
  return partFinding({
    part,
    severity: 'error',
    code: 'case/hardness-out-of-reach',
    path: '/hardening/hardness',
    message: `${fixed(hardness, 0)} HV after finishing is not below what ${part.material.grade} reaches at the surface: about ${surface.usual} HV${range}`,
    hint: 'ask for less hardness, or choose a steel that hardens further',
  })
}
