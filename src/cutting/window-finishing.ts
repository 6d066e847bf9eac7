import { fixed } from '../figures.ts'
import { insideCornerFeed, LARGEST_CUTTER_IN_CORNER } from '../handbook/end-milling.ts'
import { MILLING_STARTS } from '../handbook/milling-speeds.ts'
import { told, worked } from '../known.ts'
import { wallLevels } from '../ports/path/levels.ts'
import type { CutShape } from '../ports/path/tool-path.ts'
import { finishArc, wallFloors } from '../ports/path/wall-floor.ts'
import type { EndMill } from '../shop/tool.ts'
import { type Micrometre, type Millimetre, type MillimetrePerMinute, micrometres } from '../units.ts'
import { type CuttingTask, START_AT_SMALL } from './cutting-task.ts'
import { type EndMillSetting, edgesOf } from './end-mill-setting.ts'
import { figure } from './figure.ts'
import { finishingDepth, type SideCut, sideCut } from './side-cut.ts'
import type { Step } from './step.ts'
import { ofTool } from './where-from.ts'
import { type MadeCut, madeCut, measuredCut, type WindowJob, wallFeeds, wallStep } from './window-job.ts'

/** A finishing pass may bend the cutter by this share of the tolerance of a port's edge. Common practice, no source. */
const BEND_OF_TOLERANCE = 0.25

/** Takes the wall's stock level by level, at a feed that the cutter stands, then runs them once more without infeed. */
export function finishWindow(task: CuttingTask, job: WindowJob): readonly MadeCut[] {
  const { window, named, left } = job
  const setting = left?.finishesWall === false ? job.setting : job.roughing
  const rounded = left?.finishesWall ? left.rounded : undefined
  const D = setting.mill.diameter
  const arc = finishArc(window, D, rounded)
  const way = { cutter: D, arc, ...(rounded === undefined ? {} : { rounded }) }
  const floors = wallFloors(window, { kind: 'finish', levels: 1, ...wallFeeds(1), ...way })
  const ae = job.roughing.wallStock
  const mostBend = mostBendOf(task, job)
  const planned = wallLevels(floors, finishingDepth(task, setting, { ae, most: mostLevel(setting), mostBend }))
  if (!planned) return []
  const cut = sideCut(task, setting, { depth: planned.depth, ae, mostBend, about: named })
  reportBend(task, { mill: setting.mill, named, mostBend, cut })
  reportLevels(task, { setting, named, ...planned })
  const corner = Math.max(D / 2, rounded ?? window.tightestCorner ?? window.largestCutter / 1.6)
  const nearCorner = D / 2 > LARGEST_CUTTER_IN_CORNER * corner + 1e-9
  const remarks = [
    START_AT_SMALL,
    `take ${figure(ae)} mm off the wall; climb milling`,
    ...cornerFeed(task, job, { vf: cut.tableFeed, mill: setting.mill, corner }),
    arcRemark(arc),
    ...(nearCorner ? ['cutter nearly fills the corners'] : []),
    ...(rounded === undefined ? [] : [`leaves a radius of ${figure(rounded)} mm in the corners for the small cutter`]),
  ]
  return twice(job, setting, cut, {
    ...planned,
    remarks,
    finish: { kind: 'finish', levels: planned.levels, ...wallFeeds(cut.tableFeed), ...way },
    spring: { kind: 'spring', levels: planned.levels, ...wallFeeds(cut.tableFeed), ...way },
    actions: [`finish ${named}`, `spring pass ${named}`],
  })
}

/** No level along the wall is deeper. */
export const mostLevel = (setting: EndMillSetting): Millimetre =>
  Math.min(MILLING_STARTS.finishDepth * setting.mill.diameter, edgesOf(setting.mill))

export const mostBendOf = ({ shop }: CuttingTask, { port }: WindowJob): Micrometre =>
  micrometres(BEND_OF_TOLERANCE * (port.edge?.milledTo || shop.habits.portEdgeTolerance))

export const arcRemark = (arc: Millimetre): string =>
  arc > 0
    ? `on and off the wall on an arc of ${figure(arc)} mm, beside the timing edge`
    : 'straight to the wall: an arc has no room'

export function cornerFeed(
  task: CuttingTask,
  { named }: WindowJob,
  { vf, mill, corner }: { readonly vf: MillimetrePerMinute; readonly mill: EndMill; readonly corner: Millimetre },
): readonly string[] {
  const { notebook, operation } = task
  const D = mill.diameter
  const about = { operation: operation.number, about: named }
  const inCorner = notebook.use(
    insideCornerFeed,
    { vf, ...told(worked('tightest corner of the window'), { R: corner }), ...told(ofTool(task, mill), { rc: D / 2 }) },
    about,
  )
  return [`${fixed(inCorner, 0)} mm/min in the tightest corners`]
}

export function reportBend(
  task: CuttingTask,
  {
    mill,
    named,
    mostBend,
    cut: { strain, stays },
  }: {
    readonly mill: EndMill
    readonly named: string
    readonly mostBend: Micrometre
    readonly cut: SideCut
  },
): void {
  if (stays <= mostBend * (1 + 1e-9)) return
  task.report({
    code: 'cutting/cutter-bends',
    severity: 'warning',
    message: `${mill.name} bends ${figure(strain.deflection)} µm finishing ${named} and ${figure(stays)} µm in the spring pass; ${figure(mostBend)} µm is a quarter of the edge's tolerance`,
    hint: 'take a shorter or thicker cutter, or leave less on the wall',
    path: '/ports',
  })
}

/** In levels of a quarter of its diameter and less it can be done, and costs cutters and time. Common practice, no source. */
const SHALLOW = 0.25

export function reportLevels(
  task: CuttingTask,
  {
    setting: { mill },
    named,
    levels,
    depth,
  }: {
    readonly setting: EndMillSetting
    readonly named: string
    readonly levels: number
    readonly depth: Millimetre
  },
): void {
  if (levels < 2 || depth > SHALLOW * mill.diameter) return
  task.report({
    code: 'cutting/cutter-bends',
    severity: 'note',
    message: `${mill.name} is so slender that it finishes ${named} in ${levels} levels of ${figure(depth)} mm`,
    hint: 'draw a larger corner for a thicker cutter, or get one with a shorter neck',
    path: '/ports',
  })
}

type Twice = {
  readonly levels: number
  readonly depth: Millimetre
  readonly remarks: readonly string[]
  readonly finish: CutShape
  readonly spring: CutShape
  readonly actions: readonly [string, string]
}

/** The cut, and the same way once more without infeed. */
export function twice(
  job: WindowJob,
  setting: EndMillSetting,
  along: SideCut,
  { levels, depth, remarks, finish, spring, actions }: Twice,
): readonly MadeCut[] {
  const cut = measuredCut(job, finish, along.tableFeed)
  const common = wallStep(job, setting, along, { levels, depth, time: cut.time })
  const finishing: Step = { ...common, action: actions[0], ...along.strain, remarks }
  const again: Step = { ...common, action: actions[1], remarks: ['same path, no infeed'] }
  return [madeCut(finishing, finish, cut), madeCut(again, spring, cut)]
}
