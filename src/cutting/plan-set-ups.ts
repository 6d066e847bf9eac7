import { fixed } from '../figures.ts'
import { wallLoops } from '../ports/path/along-wall.ts'
import type { CutShape } from '../ports/path/tool-path.ts'
import type { Degree, Millimetre } from '../units.ts'
import { clearCorners, finishCorners } from './corner-finishing.ts'
import type { CuttingTask } from './cutting-task.ts'
import type { EndMillSetting } from './end-mill-setting.ts'
import { drillEntry, flatFor, windThrough } from './entry-drilling.ts'
import type { CentreLimits, SetUp, SetUpWork, WindowCut } from './set-up.ts'
import type { Step } from './step.ts'
import { finishWindow } from './window-finishing.ts'
import type { MadeCut, WindowJob } from './window-job.ts'
import { roughWindow } from './window-roughing.ts'

/** A set-up with the steps of the operation that it is made of. */
export type PlannedSetUp = { readonly setUp: SetUp; readonly steps: readonly Step[] }

type Cut = { readonly job: WindowJob; readonly made: readonly MadeCut[] }
type Tool = Pick<SetUp, 'tool' | 'diameter' | 'pocket' | 'stickOut'>

/** What is done at one tilt, in this order: nothing is drilled on a slope before its flat, nor milled before its hole. */
const WORKS: readonly {
  readonly work: SetUpWork
  readonly tool: (job: WindowJob) => Tool | undefined
  readonly cuts: (task: CuttingTask, job: WindowJob) => readonly MadeCut[]
}[] = [
  {
    work: 'mill flats',
    tool: job => (job.drill ? millOf(job, job.roughing) : undefined),
    cuts: (task, job) => {
      const flat = flatFor(task, job)
      return flat ? [flat] : []
    },
  },
  {
    work: 'drill entry holes',
    tool: drillOf,
    cuts: (task, job) => {
      const drilled = drillEntry(task, job)
      return drilled ? [drilled] : []
    },
  },
  {
    work: 'rough windows',
    tool: job => (job.left?.finishesWall === false ? millOf(job, job.roughing) : undefined),
    cuts: roughed,
  },
  {
    work: 'finish windows',
    tool: job => (job.left?.finishesWall === false ? millOf(job, job.setting) : undefined),
    cuts: (task, job) => [...clearCorners(task, job), ...finishWindow(task, job)],
  },
  {
    work: 'mill windows',
    tool: job => (job.left?.finishesWall === false ? undefined : millOf(job, job.roughing)),
    cuts: (task, job) => [...roughed(task, job), ...finishWindow(task, job)],
  },
  {
    work: 'finish corners',
    tool: job => (job.left?.finishesWall === true ? millOf(job, job.setting) : undefined),
    cuts: (task, job) => [...clearCorners(task, job), ...finishCorners(task, job)],
  },
]

function roughed(task: CuttingTask, job: WindowJob): readonly MadeCut[] {
  return [...(job.drill || job.ramps ? [] : [windThrough(task, job)]), ...roughWindow(task, job)]
}

/**
 * Every set-up of the milling, in the order of cutting: one tilt and one tool each. The tilt is set by hand, so all that is
 * done at one tilt is done together, the holes before the windows, to change tools least.
 */
export function planSetUps(task: CuttingTask, jobs: readonly WindowJob[]): readonly PlannedSetUp[] {
  const tilts = [...new Set(jobs.map(({ window }) => window.tilt))]
  const planned: PlannedSetUp[] = []
  for (const tilt of tilts) {
    const here = jobs.filter(({ window }) => window.tilt === tilt)
    for (const { work, tool, cuts } of WORKS) {
      const names = [...new Set(here.flatMap(job => tool(job)?.tool ?? []))]
      for (const name of names) {
        const cut = here
          .filter(job => tool(job)?.tool === name)
          .map((job): Cut => ({ job, made: cuts(task, job) }))
          .filter(({ made }) => made.length > 0)
        const [first] = cut
        const held = first && tool(first.job)
        if (held) planned.push(setUpOf(task, { number: planned.length + 1, work, tilt, tool: held, cut }))
      }
    }
  }
  return planned
}

function millOf({ window, setting }: WindowJob, { mill }: EndMillSetting): Tool {
  const held = mill.name === setting.mill.name ? window.held : window.roughing?.held
  const stickOut = held?.stickOut
  return {
    tool: mill.name,
    diameter: mill.diameter,
    ...(mill.pocket === undefined ? {} : { pocket: mill.pocket }),
    ...(stickOut === undefined ? {} : { stickOut }),
  }
}

function drillOf({ drill, window }: WindowJob): Tool | undefined {
  if (!drill) return undefined
  const stickOut = window.drillHeld?.stickOut
  return {
    tool: drill.name,
    diameter: drill.diameter,
    ...(drill.pocket === undefined ? {} : { pocket: drill.pocket }),
    ...(stickOut === undefined ? {} : { stickOut }),
  }
}

type Made = {
  readonly number: number
  readonly work: SetUpWork
  readonly tilt: Degree
  readonly tool: Tool
  readonly cut: readonly Cut[]
}

function setUpOf({ part, operation }: CuttingTask, { number, work, tilt, tool, cut }: Made): PlannedSetUp {
  const windows = cut.map(({ job, made }) => {
    const cuts = made.map(({ cut }) => cut)
    const slug = roughingOf(cuts)?.slug
    return {
      port: job.port.name,
      at: job.port.at,
      window: job.number,
      name: job.named,
      rotary: job.window.rotary,
      ...(slug === undefined ? {} : { slug }),
      ...limitsOf(job, cuts),
      cuts,
    }
  })
  const roughings = windows.flatMap(({ cuts }) => roughingOf(cuts) ?? [])
  const slugs = roughings.map(({ slug }) => slug)
  const steps = cut.flatMap(({ job, made }) => made.map(({ step }) => ({ ...step, setUp: number, window: job.named })))
  return {
    steps,
    setUp: {
      number,
      operation: operation.number,
      work,
      tilt,
      ...tool,
      spindleSpeed: steps[0]?.spindleSpeed ?? 0,
      windows,
      order: windows.map(({ name }) => name),
      slug: slugs.length === 0 ? 'none' : slugs.includes('kept') ? 'kept' : 'cut away',
      levels: roughings.map(({ levels }) => levels),
      wallStock: Math.max(0, ...roughings.map(({ wallStock }) => wallStock)),
      program: programName([part.number, part.revision, number, 'tilt', fixed(tilt, 3), work, tool.tool]),
    },
  }
}

/** Where a cutter that finishes goes least and farthest, over the whole wall that it reaches. */
function limitsOf({ window }: WindowJob, cuts: readonly WindowCut[]): { readonly limits?: CentreLimits } {
  for (const { shape } of cuts) {
    if (shape.kind !== 'finish' && shape.kind !== 'finish corners') continue
    const rounded = shape.kind === 'finish' ? shape.rounded : undefined
    const places = wallLoops(window, shape.cutter, rounded).flat()
    const extent = (values: readonly Millimetre[]) => [Math.min(...values), Math.max(...values)] as const
    return { limits: { x: extent(places.map(({ x }) => x)), y: extent(places.map(({ y }) => y)) } }
  }
  return {}
}

type Roughing = Extract<CutShape, { kind: 'rough' | 'cut through' }>

const roughingOf = (cuts: readonly WindowCut[]): Roughing | undefined =>
  cuts.flatMap(({ shape }) => (shape.kind === 'rough' || shape.kind === 'cut through' ? [shape] : []))[0]

/** `OX-098-21-B-3-tilt-15-mill-flats-end-mill-1_5-long-reach.nc`. */
function programName(words: readonly (string | number)[]): string {
  const plain = words.map(word => String(word).trim().replace(/\.0+$/, '').replace(/^-/, 'm').replaceAll('.', '_'))
  return `${plain.join('-').replace(/[^\p{L}\p{N}_-]+/gu, '-')}.nc`
}
