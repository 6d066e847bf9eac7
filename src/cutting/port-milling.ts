import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { type OrderedWindow, orderedWindows, windowName } from '../ports/window-order.ts'
import { clockingTime, planClocking } from './clocking.ts'
import { reportClocking } from './clocking-findings.ts'
import { withCutterWear } from './cutter-wear.ts'
import type { CuttingTask, PlannedCuts } from './cutting-task.ts'
import { makeDatum } from './datum-making.ts'
import type { EndMillSetting } from './end-mill-setting.ts'
import { endMillSettings, type SettingOf } from './end-mill-settings.ts'
import { entrySlope } from './entry-drilling.ts'
import { featureSteps, loadAndIndex } from './feature-milling.ts'
import { millingGrip } from './milling-grip.ts'
import { placesRound } from './place-round.ts'
import { planSetUps } from './plan-set-ups.ts'
import { cutterFor, drillFor } from './port-tools.ts'
import { soonestJob } from './soonest-job.ts'
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
      ...withCutterWear(
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
