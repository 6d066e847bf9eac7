import { cutLife, cuttersNeeded, wornByLength, wornByTime } from '../handbook/cutter-life.ts'
import { fromHandbook, fromShop, told, worked } from '../known.ts'
import { type Millimetre, metres } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'
import type { EndMillSetting } from './end-mill-setting.ts'
import { figure } from './figure.ts'
import type { SetUp, WindowCut } from './set-up.ts'
import type { Step } from './step.ts'
import { ofTool } from './where-from.ts'

/** The spring pass cuts nothing to speak of, and a flat is short. */
const WEARS: ReadonlySet<WindowCut['kind']> = new Set([
  ...(['rough', 'cut through', 'finish', 'wind down', 'clear corners', 'finish corners'] as const),
])

/** By its first slot; of a cutter that only cuts corners by its first clearing or finishing. */
const FIRST = [/^(rough|cut through) /, /^(clear|finish) /]

type Worn = {
  readonly task: CuttingTask
  readonly setting: EndMillSetting
  readonly setUps: readonly SetUp[]
  readonly steps: readonly Step[]
}

/** Says beside the first cut of each cutter how many of it the batch wears out, and what share of one a piece does. */
export function withCutterWear(
  task: CuttingTask,
  settings: ReadonlyMap<string, EndMillSetting>,
  setUps: readonly SetUp[],
  steps: readonly Step[],
): readonly Step[] {
  const { notebook, operation, start } = task
  const said = new Map(
    [...settings].map(([name, setting]) => {
      const about = { operation: operation.number, about: name }
      const { wear, cut } = wearOf({ task, setting, setUps, steps })
      const count = notebook.use(
        cuttersNeeded,
        {
          ...told(worked('pieces to start'), { N: start }),
          ...told(worked(`${wornByTime.symbol}, ${wornByTime.meaning}`), { n_w: wear }),
        },
        about,
      )
      const remark = `${count} cutters for the batch: ${cut}, a quarter over`
      return [name, { first: firstOf(name, steps), wear, count, remark }]
    }),
  )
  return steps.map((step, index) => {
    const worn = said.get(step.tool)
    return worn?.first === index
      ? { ...step, wornOut: Math.max(1, worn.count), wear: worn.wear, remarks: [...step.remarks, worn.remark] }
      : step
  })
}

/** By the minutes that the works says of the cutter, else by the length that one of its size lasts. */
function wearOf({ task, setting, setUps, steps }: Worn): { readonly wear: number; readonly cut: string } {
  const { notebook, operation, shop, start } = task
  const { mill, row } = setting
  const { name, diameter: D } = mill
  const about = { operation: operation.number, about: name }
  const T = shop.money?.cutters[name]?.life
  if (T !== undefined) {
    const t = steps.reduce((sum, { tool, time }) => sum + (tool === name ? time : 0), 0)
    const wear = notebook.use(
      wornByTime,
      { ...told(worked('times of its steps'), { t }), ...told(fromShop(`tools/${name}`), { T }) },
      about,
    )
    return { wear, cut: `${figure(t * start)} min of cut at ${figure(T)} min each` }
  }
  const life = notebook.use(
    cutLife,
    { ...told(fromHandbook(row.source), { life2: row.life }), ...told(ofTool(task, mill), { D }) },
    about,
  )
  const s = metres(lengthOf(name, setUps))
  const wear = notebook.use(wornByLength, { ...told(worked('cut length of a piece'), { s }), life }, about)
  return { wear, cut: `${figure(s * start)} m of cut at about ${figure(life)} m each` }
}

function firstOf(name: string, steps: readonly Step[]): number | undefined {
  return FIRST.map(cut => steps.findIndex(({ tool, action }) => tool === name && cut.test(action))).find(at => at >= 0)
}

const lengthOf = (tool: string, setUps: readonly SetUp[]): Millimetre =>
  setUps
    .filter(setUp => setUp.tool === tool)
    .flatMap(({ windows }) => windows.flatMap(({ cuts }) => cuts))
    .reduce((sum, { kind, length }) => sum + (WEARS.has(kind) ? length : 0), 0)
