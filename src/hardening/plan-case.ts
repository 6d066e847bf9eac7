import { type Finding, hasErrors } from '../finding.ts'
import { CARBURISED_AUSTENITE, CARBURISED_TEMPER } from '../handbook/carburising.ts'
import { type CompoundLayer, keptLayer } from '../handbook/compound-layer.ts'
import { caseLeft } from '../handbook/grinding-off-case.ts'
import { depthDefinition, hardeningWindow } from '../handbook/hardening-processes.ts'
import { largestLoad, SURFACE_LOAD, standardLoad } from '../handbook/vickers-load.ts'
import { type Figure, fromHandbook, type Known, known, named, told, worked } from '../known.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import { hardensThrough } from '../part/takes-case.ts'
import type { Shop } from '../shop/shop.ts'
import { type Celsius, type Hour, type Millimetre, millimetres, type Vickers } from '../units.ts'
import { openNotebook, SCRATCH, type Working } from '../working.ts'
import { caseCycle } from './case-cycle.ts'
import { type DepthBounds, orderedDepth } from './case-depth.ts'
import { type CaseFigures, caseFigures } from './case-figures.ts'
import { type CaseDepth, growthIn } from './case-growth.ts'
import { caseLimit } from './case-limit.ts'
import { caseOrder } from './case-order.ts'
import { choiceFindings, orderFindings, temperatureFindings } from './case-order-checks.ts'
import { LEFT, ORDERED, TAKEN } from './case-origins.ts'
import type { CaseLimit, CasePlan } from './case-plan.ts'
import { caseProfile, hardnessAfter, profilePoints } from './case-profile.ts'
import { roomFindings } from './case-room.ts'
import { hardnessFindings, shareFindings } from './case-shares.ts'
import { treatedSides } from './case-surfaces.ts'
import { reliefFindings, stressReliefIn, temperFindings, temperUnknown } from './case-temper.ts'
import { caseTime } from './case-time.ts'
import { chooseQuench, quenchFindings } from './choose-quench.ts'
import { tensionFindings } from './core-tension.ts'
import type { Growth } from './growth.ts'
import { leastSurface } from './hard-enough.ts'
import { layerFindings, runsOnLayer } from './layer-kept.ts'
import { planQuench } from './plan-quench.ts'
import type { QuenchPlan } from './quench-plan.ts'
import { recordFindings, recordUses } from './records.ts'
import type { Removal } from './removal.ts'
import { beyondUsual } from './usual-depth.ts'

export type PlannedCase = {
  /** Absent where a figure is missing or the process is refused: the findings say which. */
  readonly case?: CasePlan
  /** Instead of a case, where the part is hardened through. */
  readonly quench?: QuenchPlan
  /** The deepest case that may be ordered, where the process is one that is planned. */
  readonly limit?: CaseLimit
  readonly findings: readonly Finding[]
  readonly workings: readonly Working[]
}

/**
 * Growth per side, positive where metal grows: the outside gets larger, the bore smaller. With a depth that is ordered, the
 * least growth goes with the least depth and the most with the most. Its workings are among those of `planCase` too.
 */
export function growthFor(
  part: Part,
  shop: Shop,
  depth: CaseDepth,
): Growth & { readonly workings: readonly Working[] } {
  const notebook = openNotebook()
  return {
    ...growthIn({ notebook, part, shop, depth }),
    get workings() {
      return notebook.workings
    },
  }
}

/**
 * The case to order so that enough of it is left everywhere, with what the hardener's order and the stock sheet need.
 * `between` bounds the depth ordered, where what comes off is the part file's choice or the order stands.
 */
export function planCase({
  part,
  shop,
  removal,
  wall,
  between,
}: {
  readonly part: Part
  readonly shop: Shop
  readonly removal: readonly Removal[]
  readonly wall: Millimetre
  readonly between?: DepthBounds | undefined
}): PlannedCase {
  const notebook = openNotebook()
  // Written out only when read: the stock is settled by trial, and most trials go nowhere.
  const { hardening } = part
  const window = hardening && hardeningWindow(hardening.process)
  const limit = window && caseLimit(part, window.process, window.term, wall)
  const outcome = (planned: Omit<PlannedCase, 'workings' | 'limit'>): PlannedCase => ({
    ...planned,
    ...(limit && { limit }),
    get workings() {
      return notebook.workings
    },
  })
  if (!hardening) return outcome({ findings: [] })
  if (hardensThrough(part)) return outcome(planQuench(notebook, part, shop))
  const cycle = caseCycle(part, shop)
  if (!window || !limit || !cycle) return outcome({ findings: [] })

  const T = cycle.temperature
  const temperature = T.value
  const before = [
    ...choiceFindings(part, window),
    ...temperatureFindings(part, window, temperature),
    ...orderFindings(part, shop, wall),
  ]
  if (hasErrors(before.filter(({ code }) => STOPS.has(code)))) return outcome({ findings: before })
  const figures = caseFigures(notebook, part, shop, window)
  if ('missing' in figures) return outcome({ findings: [...before, gradeUnknown(part, figures.missing)] })

  const depth = orderedDepth({ notebook, part, window, figures, removal, wall, between })
  if ('refused' in depth) return outcome({ findings: [...before, depth.refused] })
  const { asked, ordered } = depth
  const middle = (ordered.least + ordered.most) / 2
  const N = ordered.least
  const running = removal.filter(({ face }) => !face)
  const most = Math.max(0, ...running.map(({ most }) => most))
  const hardness = hardening.hardness?.least
  const surfaceLeast = hardness === undefined ? undefined : leastSurface({ notebook, figures, hardness, s: most, N })
  const profile = caseProfile({ notebook, figures, N, surfaceLeast: surfaceLeast ?? 0 })
  const after = hardnessAfter(notebook, profile, running)
  const left = {
    least: notebook.use(
      caseLeft,
      { ...told(ORDERED, { N: ordered.least }), ...told(TAKEN, { s: most }) },
      { about: 'case, worst place' },
    ),
    most: ordered.most - Math.max(0, Math.min(...running.map(({ least }) => least), most)),
  }
  const time = caseTime({ notebook, window, figures, middle, cycle })
  const { layer } = cycle
  const growth = growthIn({ notebook, part, shop, depth: ordered })
  const softest = Math.min(figures.surface.usual, ...after.map(({ most }) => most.expected))
  const borne = notebook.use(
    largestLoad,
    {
      ...told(worked('softest of the surfaces after finishing'), { HV: softest }),
      ...told(LEFT, { N_r: Math.max(left.least, 1e-3) }),
    },
    { about: 'case' },
  )
  const load = standardLoad(Math.min(SURFACE_LOAD, borne))

  const kept = layer && runsOnLayer(part, removal).length > 0 ? keptLayer(layer) : undefined
  const { decidedBy } = depth
  const leaves = (N: Millimetre): Vickers =>
    caseProfile({ notebook: SCRATCH, figures, N, surfaceLeast: surfaceLeast ?? 0 }).at(most).expected
  const beyond = beyondUsual({ part, shop, window, ordered, decidedBy, time, leaves })

  return outcome({
    case: {
      process: hardening.process,
      ordered,
      decidedBy: depth.decidedBy,
      growth,
      records: recordUses(part, shop, ordered.least),
      left,
      asked: asked.value,
      limit,
      basis: basisOf(asked, T, figures, layer),
      definition: depthDefinition(window.term, figures.limit),
      time,
      temperature,
      stages: cycle.stages.map(({ temperature: { value }, share }) => ({
        temperature: value,
        hours: share * time.nominal,
      })),
      compoundLayer: {
        nominal: millimetres(layer?.usual ?? 0),
        most: millimetres(layer?.ordered ?? 0),
        ...(kept !== undefined && { kept: millimetres(kept) }),
      },
      surfaceHardness: figures.surface.usual,
      coreHardness: figures.core.value,
      profile: profilePoints(profile, ordered.least),
      testLoad: `HV${load.load}`,
      treated: treatedSides(part),
      limitHardness: figures.limit,
      hardnessAfter: after,
      order: caseOrder({ part, window, figures, depth: N, temperature, surfaceLeast }),
      ...quenchedCase(part),
    },
    findings: [
      ...before,
      ...depth.findings,
      ...(figures.tempered ? temperIn(part, temperature, time.nominal) : []),
      ...(beyond.length > 0 ? beyond : shareFindings(part, window, running, N)),
      ...layerFindings(part, layer, removal),
      ...quenchFindings(part),
      ...hardnessFindings({ part, after, figures, surfaceLeast }),
      ...roomFindings({ notebook, part, window, wall, ordered }),
      ...recordFindings(shop, { part, growth, depth: ordered.least }),
      ...tensionFindings({ notebook, part, shop, core: figures.core, depth: ordered }),
    ],
  })

  function temperIn(part: Part, nitriding: Celsius, hours: Hour): readonly Finding[] {
    const { temper } = part.material
    if (temper === undefined) return [temperUnknown(part, nitriding)]
    const relief = stressReliefIn(notebook, part, nitriding, temper)
    return [...temperFindings({ notebook, part, nitriding, hours, temper }), ...reliefFindings(part, relief, temper)]
  }
}

/** Of a carburised part: carbon alone makes nothing hard. */
function quenchedCase(part: Part): Pick<CasePlan, 'quenched'> {
  const quench = chooseQuench(part)
  if (!quench) return {}
  const { least, most } = CARBURISED_TEMPER
  return { quenched: { quench, temper: { least, most }, austenite: CARBURISED_AUSTENITE } }
}

/** The figures that the case is ordered from, as they were chosen. */
const basisOf = (
  asked: Known,
  temperature: Known,
  { surface, core, depthConstant }: CaseFigures,
  layer: CompoundLayer | undefined,
): readonly Figure[] => [
  named('depth asked', asked),
  named('temperature', temperature),
  named('surface hardness reached', known(surface.usual, 'HV', surface)),
  named('core hardness', core),
  ...(depthConstant ? [named('depth constant at 520 °C', known(depthConstant.usual, 'mm/h^0.5', depthConstant))] : []),
  ...(layer ? [named('compound layer, usual', known(millimetres(layer.usual), 'mm', fromHandbook(layer.source)))] : []),
]

/** After these no case can be reckoned; other errors leave it standing, so that the rest can be seen. */
const STOPS: ReadonlySet<string> = new Set(['case/process-refused', 'case/temperature-outside-process'])

function gradeUnknown(part: Part, missing: readonly string[]): Finding {
  const { grade } = part.material
  return partFinding({
    part,
    severity: 'error',
    code: 'case/grade-unknown',
    path: '/material/grade',
    message: `the handbook has no ${missing.join(', no ')} for ${part.hardening?.process} of ${grade}`,
    hint: `ask the hardener and write it in the shop file under reached: {grade: ${grade}, surface: …, core: …, depth-constant: …}`,
  })
}
