import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { DEEPEST_CASE, LEAST_CASE_LEFT, REMOVAL_SHARE } from '../handbook/case-limits.ts'
import { DEPTH_TOLERANCE_SOURCE, type DepthTerm, upperTolerance } from '../handbook/case-tolerance.ts'
import { depthForShare, depthToOrder } from '../handbook/grinding-off-case.ts'
import { DEPTH_DEFINITIONS, type HardeningWindow } from '../handbook/hardening-processes.ts'
import { depthForHardness, SHAPE, shareOfRise } from '../handbook/hardness-profile.ts'
import { NITRIDED_PIN, PIN_CASE_SOURCE, pinCase } from '../handbook/pin-case.ts'
import { fromHandbook, fromPart, type Known, known, worked } from '../known.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import type { Millimetre, Vickers } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { CaseFigures } from './case-figures.ts'
import { DEPTH_STEP } from './case-limit.ts'

export type OrderedDepth = {
  readonly asked: Known<'mm'>
  readonly ordered: { readonly least: Millimetre; readonly most: Millimetre }
  readonly findings: readonly Finding[]
}

/**
 * Depth to order: the depth asked is left, the hardness asked is held by the expected model, and no more than half of the
 * case goes, all where most is taken off. No minus side. A face, on which nothing slides, decides by its depth alone.
 */
export function orderedDepth({
  notebook,
  part,
  window,
  figures,
  removal,
  wall,
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly window: HardeningWindow
  readonly figures: CaseFigures
  readonly removal: readonly { readonly most: Millimetre; readonly face?: true }[]
  readonly wall: Millimetre
}): OrderedDepth | { readonly refused: Finding } {
  const s = Math.max(0, ...removal.filter(({ face }) => !face).map(({ most }) => most))
  const s_any = Math.max(0, ...removal.map(({ most }) => most))
  const { asked, findings } = depthAsked(part, window, wall)
  if (asked === undefined) return { refused: depthMissing(part, window) }
  const { core, limit, surface } = figures
  if (!(core.value < limit && limit < surface.usual)) return { refused: noRise(part, window, figures) }
  const about = { about: 'case' }
  const reasons = [
    {
      why: 'the depth asked',
      depth: notebook.use(
        depthToOrder,
        { N_f: asked, s_max: known(s_any, 'mm', worked('most taken off a surface')) },
        about,
      ),
    },
    {
      why: `no more than ${REMOVAL_SHARE.refuse * 100} % of the case taken off`,
      depth: notebook.use(depthForShare, { s_max: s, f: REMOVAL_SHARE.refuse }, about),
    },
  ]
  const hardness = part.hardening?.hardness?.least
  if (hardness !== undefined && hardness > figures.core.value) {
    if (hardness >= figures.surface.usual) return { refused: outOfReach(part, figures, hardness) }
    const share = (H: number) =>
      notebook.use(
        shareOfRise,
        { H, H_s: known(figures.surface.usual, 'HV', figures.surface), H_c: figures.core },
        about,
      )
    if (s > 0) {
      const given = { s, p: share(figures.limit), q: share(hardness), n: SHAPE.expected }
      reasons.push({
        why: `${fixed(hardness, 0)} HV by the expected model`,
        depth: notebook.use(depthForHardness, given, about),
      })
    }
  }
  const deciding = reasons.reduce((deepest, reason) => (reason.depth > deepest.depth ? reason : deepest))
  const least = Math.round(Math.ceil(deciding.depth / DEPTH_STEP - 1e-6)) * DEPTH_STEP
  const rounded = Math.max(DEPTH_STEP, Number(least.toFixed(2)))
  if (rounded > DEEPEST_CASE[window.term].depth) {
    return {
      refused: partFinding({
        part,
        severity: 'error',
        code: 'case/too-deep',
        path: '/hardening/depth',
        message: `${fixed(s, 3)} mm off at the worst place needs a case of ${fixed(rounded, 2)} mm (${deciding.why}); ${window.process} is ordered to ${DEEPEST_CASE[window.term].depth} mm at most`,
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
  return { asked, ordered: { least: rounded, most: Number((rounded + upper).toFixed(3)) }, findings }
}

type Asked = { readonly asked?: Known<'mm'>; readonly findings: readonly Finding[] }

/** The drawing's depth; or what a running surface, or a pin of that wall, is usually left with. */
function depthAsked(part: Part, { term }: HardeningWindow, wall: Millimetre): Asked {
  const asked = part.hardening?.depth?.least
  if (asked !== undefined) return { asked: known(asked, 'mm', fromPart('/hardening/depth')), findings: [] }
  const usual = usualDepth(part, term, wall)
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
  term: DepthTerm,
  wall: Millimetre,
): { readonly depth: Millimetre; readonly source: string } | undefined {
  const pin = kind === 'pin'
  if (term === 'NHD') {
    return pin
      ? { depth: NITRIDED_PIN.outside, source: PIN_CASE_SOURCE }
      : { depth: LEAST_CASE_LEFT, source: 'estimate for a running surface, 0.10 to 0.25' }
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
    message: `${process} without a depth: ${DEPTH_DEFINITIONS[term]} decides the stock and the order`,
    hint: 'write depth: min … as it must be left after finishing',
  })
}

/** A depth of hardness ends between core and surface; where the bar is about as hard as the case there is no such place. */
function noRise(part: Part, { process, term }: HardeningWindow, { surface, core, limit }: CaseFigures): Finding {
  const soft = limit <= core.value
  return partFinding({
    part,
    severity: 'error',
    code: 'case/hardness-out-of-reach',
    path: soft && term === 'SHD' ? '/hardening/hardness' : '/material/hardness',
    message: `${process} of ${part.material.grade}: the ${term} would end at ${fixed(limit, 0)} HV, which is not between the core's ${fixed(core.value, 0)} HV and the surface's ${fixed(surface.usual, 0)} HV`,
    hint: soft
      ? 'ask for more hardness, or start from softer bar'
      : 'start from softer bar, or choose a steel that hardens further',
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
