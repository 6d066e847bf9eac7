import { nearestBandAt } from '../band.ts'
import { cutLife, cuttersNeeded } from '../handbook/cutter-life.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import type { PlannedPort, PortWindow } from '../ports/port.ts'
import type { Drill } from '../shop/tool.ts'
import { type Degree, type Millimetre, metres } from '../units.ts'
import type { CuttingTask, PlannedCuts } from './cutting-task.ts'
import { type EndMillSetting, endMillSetting } from './end-mill-setting.ts'
import { drillEntry, type Entry, entrySlope, flatFor, windThrough } from './entry-drilling.ts'
import { figure } from './figure.ts'
import { cutterFor, drillFor } from './port-tools.ts'
import type { Step } from './step.ts'
import { wallToCut } from './wall-to-cut.ts'
import { finishWindow } from './window-finishing.ts'
import { roughWindow } from './window-roughing.ts'

type Job = {
  readonly tilt: Degree
  readonly setting: EndMillSetting
  readonly entry: Entry
  readonly drill?: Drill
  readonly window: {
    readonly port: string
    readonly named: string
    readonly pathLength: Millimetre
    readonly depth: Millimetre
    readonly corner: Millimetre
  }
}

/**
 * Every window: flat where the face is steep, entry hole, rough, finish, spring pass. The batch goes through once for each
 * tilt, since the tilt is set by hand; within a tilt the holes come first, to change tools least.
 */
export function millPorts(task: CuttingTask): PlannedCuts {
  const { milling } = task.material
  if (!milling) {
    task.report({
      code: 'cutting/too-hard-to-cut',
      severity: 'error',
      message: `no end-milling data for ${task.material.grade} at ${figure(task.material.HB)} HB`,
      hint: 'buy the bar softer: small end mills are planned up to 325 HB in steel',
      path: '/material/hardness',
    })
    return { steps: [] }
  }
  const settings = new Map<string, EndMillSetting>()
  const settingOf = (mill: EndMillSetting['mill']): EndMillSetting => {
    const known = settings.get(mill.name) ?? endMillSetting(task, milling, mill)
    settings.set(mill.name, known)
    return known
  }
  const jobs = task.ports.flatMap(port =>
    port.windows.flatMap((window, index) => {
      const mill = cutterFor(task, port, window)
      return mill ? [jobFor(task, port, window, index, settingOf(mill))] : []
    }),
  )
  const tilts = [...new Set(jobs.map(({ tilt }) => tilt))]
  const lengths = new Map<string, Millimetre>()
  const steps = tilts.flatMap(tilt => {
    const here = jobs.filter(job => job.tilt === tilt)
    return [
      ...here.flatMap(({ setting, entry, drill, window }) => {
        const start = drill ? flatFor(task, setting, entry) : windThrough(task, setting, entry, window.depth)
        return start ? [start] : []
      }),
      ...here.flatMap(({ entry, drill }) => (drill ? [drillEntry(task, drill, entry)] : [])),
      ...here.flatMap(({ setting, window }) => {
        const roughed = roughWindow(task, setting, window)
        const finished = finishWindow(task, setting, window)
        const { name } = setting.mill
        lengths.set(name, (lengths.get(name) ?? 0) + roughed.cutLength + finished.cutLength)
        return [roughed.step, ...finished.steps]
      }),
    ]
  })
  const indexings = jobs.reduce((sum, { drill }) => sum + (drill ? 2 : 1), 0)
  const again = Math.max(0, tilts.length - 1)
  return {
    steps: withCutterCounts(task, settings, lengths, steps),
    each: indexings * SHOP_TIMES.index + again * task.machine.handling,
    setup: again * SHOP_TIMES.tiltSetting,
  }
}

function jobFor(task: CuttingTask, port: PlannedPort, window: PortWindow, index: number, setting: EndMillSetting): Job {
  const named = port.windows.length > 1 ? `${port.name}, window ${index + 1} of ${port.windows.length}` : port.name
  const middle = (port.top + port.bottom) / 2
  const outside = nearestBandAt(task.after.outside, middle)?.diameter ?? 0
  const drill = drillFor(task, window)
  const { plunge, entryHole } = window
  return {
    tilt: window.tilt,
    setting,
    ...(drill ? { drill } : {}),
    entry: {
      port: port.name,
      named,
      diameter: entryHole.diameter,
      slope: entrySlope(task, named, window.tilt, entryHole.y, outside),
      wall: plunge.wall,
    },
    window: {
      port: port.name,
      named,
      pathLength: window.pathLength,
      depth: wallToCut(window, task.after, middle),
      corner: window.tightestCorner ?? window.largestCutter / 1.6,
    },
  }
}

/** Says beside the first cut of each cutter how many of it the batch wears out. */
function withCutterCounts(
  { notebook, operation, start }: CuttingTask,
  settings: ReadonlyMap<string, EndMillSetting>,
  lengths: ReadonlyMap<string, Millimetre>,
  steps: readonly Step[],
): readonly Step[] {
  const told = new Map(
    [...settings].map(([name, { mill, row }]) => {
      const about = { operation: operation.number, about: name }
      const life = notebook.use(cutLife, { life2: row.life, D: mill.diameter }, about)
      const s = metres((lengths.get(name) ?? 0) * start)
      const count = notebook.use(cuttersNeeded, { s, life }, about)
      const remark = `${count} cutters for the batch: ${figure(s)} m of cut at about ${figure(life)} m each, a quarter over`
      return [name, { first: steps.findIndex(step => step.tool === name && step.action.startsWith('rough')), remark }]
    }),
  )
  return steps.map((step, index) => {
    const count = told.get(step.tool)
    return count?.first === index ? { ...step, remarks: [...step.remarks, count.remark] } : step
  })
}
