import type { PlannedFeature } from '../features/feature-plan.ts'
import { fixed, inWords } from '../figures.ts'
import { LARGEST_BAR_IN_BORE } from '../handbook/boring-bar.ts'
import { FORCE_FACTORS } from '../handbook/kienzle.ts'
import { TURNING_STARTS } from '../handbook/turning-speeds.ts'
import { toolsOf } from '../shop/tool.ts'
import type { Millimetre } from '../units.ts'
import { type CuttingTask, type PlannedCuts, START_AT } from './cutting-task.ts'
import { drilledStep } from './drilled-step.ts'
import { type Step, timeOnly } from './step.ts'
import { settlePass } from './turned-pass.ts'
import { turningStep } from './turning-step.ts'

const own = ({ features = [], operation }: CuttingTask, kind: PlannedFeature['kind']): readonly PlannedFeature[] =>
  features.filter(feature => feature.kind === kind && feature.operation === operation.number)

/** The open end: drilled, bored to size, and the register that the rest is held by in the same cut. */
export function turnInside(task: CuttingTask): PlannedCuts {
  return { steps: own(task, 'inside').flatMap(feature => [...drilled(task, feature), ...bored(task, feature)]) }
}

/** Between drill and finished inside, on diameter. Common practice, no source. */
const LEFT: Millimetre = 2

const drillFor = (task: CuttingTask, size: Millimetre, length: Millimetre) =>
  toolsOf(task.shop, 'drill')
    .filter(({ diameter, fluteLength }) => diameter <= size - LEFT && fluteLength >= length)
    .toSorted((a, b) => b.diameter - a.diameter)[0]

function depthUp({ sizes }: CuttingTask, name: string): Millimetre {
  return sizes.find(({ feature, of }) => feature === name && of === 'up')?.nominal ?? 0
}

function drilled(task: CuttingTask, { name, deep = 0 }: PlannedFeature): readonly Step[] {
  const length = depthUp(task, name)
  const drill = drillFor(task, 2 * deep, length)
  if (!drill) return []
  return [
    drilledStep({
      task,
      drill,
      action: `drill ${name}`,
      feature: name,
      length,
      ends: 'blind',
      remarks: [START_AT, `blind: the point stops 1 above the crown's ${inWords(length)}`],
    }),
  ]
}

function bored(task: CuttingTask, { name, deep = 0, corner = 0 }: PlannedFeature): readonly Step[] {
  const length = depthUp(task, name)
  const hole = drillFor(task, 2 * deep, length)?.diameter ?? 0
  const bar = toolsOf(task.shop, 'boring bar')
    .filter(({ diameter, reach }) => diameter <= LARGEST_BAR_IN_BORE * 2 * deep + 1e-9 && reach >= length)
    .toSorted((a, b) => b.diameter - a.diameter || b.noseRadius - a.noseRadius)[0]
  const pass = settlePass(task, {
    feature: name,
    diameter: 2 * deep,
    stock: deep - hole / 2,
    mostDepth: TURNING_STARTS.rough.bore.depth,
    feed: Math.min(TURNING_STARTS.rough.bore.feed, TURNING_STARTS.mostFeedOverNose * (bar?.noseRadius ?? 0.4)),
    operationFactor: FORCE_FACTORS.boringDrillingMilling,
  })
  const remarks = [
    `corner ${inWords(corner)} under the crown; the mouth and the end face in the same cut: the register for all that follows, H7 over 5 mm`,
  ]
  const step = { tool: bar?.name ?? 'boring bar, to get', action: `bore ${name}`, feature: name, remarks }
  return [turningStep(task, step, pass, length)]
}

/** Drilled, bored nearly to size, the grooves of the clips cut, and finished through both bosses in one pass. */
export function borePin(task: CuttingTask): PlannedCuts {
  return {
    steps: own(task, 'pin bore').flatMap(feature => {
      const { name, across, offset = 0, clip } = feature
      const size = across?.width ?? 0
      const length = 2 * Math.max(...task.after.outside.map(({ diameter }) => diameter / 2))
      const drill = drillFor(task, size + LEFT - UNDER, length)
      const placed =
        offset === 0
          ? []
          : [`axis ${fixed(Math.abs(offset), 2)} toward ${offset > 0 ? 'the thrust side' : 'the other side'}`]
      return [
        ...(drill
          ? [
              drilledStep({
                task,
                drill,
                action: `drill ${name}`,
                feature: name,
                length,
                ends: 'through',
                remarks: [START_AT, ...placed, 'through both bosses from one side'],
              }),
            ]
          : [timeOnly('drill, to get', `drill ${name}`, 0, placed)]),
        timeOnly('boring head', `bore ${name} to ${fixed(size - 0.2, 2)}`, PIN.bore, ['both bosses in one pass']),
        ...(clip === undefined
          ? []
          : [
              timeOnly('clip-groove tool', `groove ${name} for its clips`, 2 * PIN.groove, [
                `full round for a wire of ${inWords(clip)}`,
              ]),
            ]),
        timeOnly('boring head, diamond', `finish ${name}`, PIN.bore, [
          'both bosses in one pass; measure, then the last cut',
        ]),
      ]
    }),
  }
}

/** Left in the pin bore for boring, mm. Minutes for a pass through both bosses, and for a clip groove. Common practice, no source. */
const UNDER: Millimetre = 0.5
const PIN = { bore: 1.5, groove: 0.8 } as const

/** Each side of an oval skirt, with the axis moved along the pin. */
export function relieveSkirt({ name, relief }: PlannedFeature): readonly Step[] {
  if (!relief) return []
  return [
    timeOnly('finishing tool', `relieve ${name}, both sides`, 2 * SIDE, [
      `skirt round first; then each side with the axis ${fixed(relief.offset, 3)} along the pin away from that side, tool at radius ${fixed(relief.radius, 3)}: it fades out at ${inWords(relief.fades)}° from the pin`,
      'a lathe that follows an oval turns it in one; panels 0.3 deep at the bosses, milled, serve where neither is at hand and the drawing allows them',
    ]),
  ]
}

/** To move the piston and turn a side, min. Common practice, no source. */
const SIDE = 2.5
