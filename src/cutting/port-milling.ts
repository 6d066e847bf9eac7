import { cutLife, cuttersNeeded } from '../handbook/cutter-life.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { told as from, fromHandbook, worked } from '../known.ts'
import { type OrderedWindow, orderedWindows, windowName } from '../ports/window-order.ts'
import { type Millimetre, metres } from '../units.ts'
import { clockingTime, planClocking } from './clocking.ts'
import { reportClocking } from './clocking-findings.ts'
import type { CuttingTask, PlannedCuts } from './cutting-task.ts'
import { makeDatum } from './datum-making.ts'
import type { EndMillSetting } from './end-mill-setting.ts'
import { endMillSettings, type SettingOf } from './end-mill-settings.ts'
import { entrySlope } from './entry-drilling.ts'
import { featureSteps, loadAndIndex } from './feature-milling.ts'
import { figure } from './figure.ts'
import { millingGrip } from './milling-grip.ts'
import { placesRound } from './place-round.ts'
import { planSetUps } from './plan-set-ups.ts'
import { cutterFor, drillFor } from './port-tools.ts'
import type { SetUp, WindowCut } from './set-up.ts'
import { soonestJob } from './soonest-job.ts'
import type { Step } from './step.ts'
import { ofTool } from './where-from.ts'
import type { WindowJob } from './window-job.ts'

/** Every window, set-up by set-up, with what loading, clocking and tilting take. */
export function millPorts(task: CuttingTask): PlannedCuts {
  const settings = endMillSettings(task)
  if (!settings) return { steps: [] }
  const settingOf = settings.of
  const jobs = orderedWindows(task.ports).flatMap(ordered => {
    const mill = cutterFor(task, ordered.window)
    return mill ? [jobFor(task, ordered, settingOf(mill), settingOf)] : []
  })
  const planned = planSetUps(task, jobs)
  const setUps = planned.map(({ setUp }) => setUp)
  const windows = setUps.flatMap(setUp => setUp.windows)
  const clocking = planClocking(task)
  reportClocking(task, clocking)
  const places = placesRound(task, clocking)
  const loading = clockingTime(clocking)
  const made = planned.flatMap(({ steps }) =>
    steps.flatMap(step => {
      const job = jobs.find(({ named }) => named === step.window)
      return job ? [{ job, step }] : []
    }),
  )
  const grip = task.grip && millingGrip(task, task.grip, made)
  const slugs = windows.filter(({ slug }) => slug === 'kept').length
  return {
    setUps,
    clocking,
    places,
    ...(grip ? { grip } : {}),
    steps: [
      ...makeDatum(task, clocking.datum, settingOf),
      ...featureSteps(task, settingOf),
      ...withCutterCounts(
        task,
        settings.settled,
        setUps,
        planned.flatMap(({ steps }) => steps),
      ),
    ],
    each: windows.length * SHOP_TIMES.index + slugs * SHOP_TIMES.slugOut + loading.each + loadAndIndex(task),
    setup: loading.setup,
  }
}

function jobFor(task: CuttingTask, ordered: OrderedWindow, setting: EndMillSetting, settingOf: SettingOf): WindowJob {
  const { window } = ordered
  const named = windowName(ordered)
  const drill = drillFor(task, window)
  const settled = {
    ...ordered,
    named,
    setting,
    ...(drill ? { drill } : {}),
    slope: entrySlope(task, named, {
      tilt: window.tilt,
      offset: window.entryHole.y,
      outside: 2 * window.walls.outside,
    }),
  }
  return soonestJob(task, settled, settingOf)
}

/** The spring pass cuts nothing to speak of, and a flat is short. */
const WEARS: ReadonlySet<WindowCut['kind']> = new Set([
  ...(['rough', 'cut through', 'finish', 'wind down', 'clear corners', 'finish corners'] as const),
])

/** By its first slot; of a cutter that only cuts corners by its first clearing or finishing. */
const FIRST = [/^(rough|cut through) /, /^(clear|finish) /]

/** Says beside the first cut of each cutter how many of it the batch wears out. */
function withCutterCounts(
  task: CuttingTask,
  settings: ReadonlyMap<string, EndMillSetting>,
  setUps: readonly SetUp[],
  steps: readonly Step[],
): readonly Step[] {
  const { notebook, operation, start } = task
  const told = new Map(
    [...settings].map(([name, { mill, row }]) => {
      const about = { operation: operation.number, about: name }
      const life = notebook.use(
        cutLife,
        { ...from(fromHandbook(row.source), { life2: row.life }), ...from(ofTool(task, mill), { D: mill.diameter }) },
        about,
      )
      const s = metres(lengthOf(name, setUps) * start)
      const count = notebook.use(cuttersNeeded, { ...from(worked('cut length of the batch'), { s }), life }, about)
      const remark = `${count} cutters for the batch: ${figure(s)} m of cut at about ${figure(life)} m each, a quarter over`
      return [name, { first: firstOf(name, steps), count, remark }]
    }),
  )
  return steps.map((step, index) => {
    const worn = told.get(step.tool)
    return worn?.first === index
      ? { ...step, wornOut: Math.max(1, worn.count), remarks: [...step.remarks, worn.remark] }
      : step
  })
}

function firstOf(name: string, steps: readonly Step[]): number | undefined {
  return FIRST.map(cut => steps.findIndex(({ tool, action }) => tool === name && cut.test(action))).find(at => at >= 0)
}

const lengthOf = (tool: string, setUps: readonly SetUp[]): Millimetre =>
  setUps
    .filter(setUp => setUp.tool === tool)
    .flatMap(({ windows }) => windows.flatMap(({ cuts }) => cuts))
    .reduce((sum, { kind, length }) => sum + (WEARS.has(kind) ? length : 0), 0)
