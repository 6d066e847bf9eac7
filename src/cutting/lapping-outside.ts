import { LAPPING, lappingTime } from '../handbook/lapping.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { told } from '../known.ts'
import { toolsOf } from '../shop/tool.ts'
import { type Millimetre, micrometres } from '../units.ts'
import { type CuttingTask, type PlannedCuts, START_AT } from './cutting-task.ts'
import { figure } from './figure.ts'
import { spindleFor } from './spindle.ts'
import { type Step, timeOnly } from './step.ts'
import { type BandCut, outsideCuts } from './turned-cuts.ts'
import { AS_CUT, PRACTICE } from './where-from.ts'

/** Laps the bands that change with a ring: to size with the coarse compound, then smooth with the fine one where the drawing asks. */
export function lapOutside(task: CuttingTask): PlannedCuts {
  const cuts = outsideCuts(task.before, task.after)
  const steps = cuts.flatMap(cut => lapBand(task, cut))
  if (steps.length === 0) return { steps }
  const wash = timeOnly('washer', 'wash, demagnetise, oil at once', SHOP_TIMES.wash, [
    task.after.bore.length > 0
      ? 'brush the bore through: grit that stays in it runs in the engine'
      : 'no grit may stay',
  ])
  return { steps: [...steps, wash] }
}

function lapBand(task: CuttingTask, cut: BandCut): readonly Step[] {
  const { notebook, operation, machine } = task
  const about = { operation: operation.number, about: cut.feature }
  const { spindleSpeed, cuttingSpeed, limitedBy } = spindleFor({
    machine,
    ...told(PRACTICE, { wanted: LAPPING.speed.usual }),
    ...told(AS_CUT, { diameter: cut.to }),
    notebook,
    about,
  })
  const z = cut.from - cut.to
  const { least, most, usual } = LAPPING.rate
  const time = notebook.use(lappingTime, { ...told(AS_CUT, { z }), ...told(PRACTICE, { rate: usual }) }, about)
  const [quickest, slowest] = [most, least].map(rate => lappingTime.value({ z, rate }))
  const wanted = task.sizes.find(
    ({ feature, roughness }) => feature === cut.feature && roughness !== undefined,
  )?.roughness
  const fine = wanted !== undefined && wanted <= LAPPING.fineRa.most
  if (wanted !== undefined && wanted < LAPPING.fineRa.least) {
    task.report({
      code: 'cutting/lap-leaves-more',
      severity: 'warning',
      message: `${cut.feature} wants Ra ${wanted}; the finest compound leaves ${LAPPING.fineRa.least} to ${LAPPING.fineRa.most} (${LAPPING.source})`,
      hint: 'ask for what a lap leaves, or agree the finish with whoever makes it',
      path: '/body/outside',
    })
  }
  const step = (stage: Stage, rest: Pick<Step, 'action' | 'depth' | 'time' | 'remarks'>): Step => ({
    tool: ringLap(task, cut, stage),
    feature: cut.feature,
    cuttingSpeed,
    spindleSpeed,
    feed: 0,
    feedUnit: 'mm/pass',
    tableFeed: 0,
    passes: 1,
    ...(limitedBy ? { limitedBy } : {}),
    ...rest,
  })
  return [
    step('coarse', {
      action: `lap ${cut.feature} to size`,
      depth: z / 2,
      time: time + SHOP_TIMES.rapid,
      remarks: [
        START_AT,
        `${figure(micrometres(z), 2)} µm on diameter at ${usual} µm a minute; at ${least} to ${most}, ${figure(slowest ?? 0, 2)} to ${figure(quickest ?? 0, 2)} min (${LAPPING.source})`,
        `${LAPPING.pressure.least} to ${LAPPING.pressure.most} N/mm² (${LAPPING.source}); stroke the ring end to end, turn the pin round half way`,
        `measure cold: out of round ${LAPPING.pin.roundness} µm, end to end ${LAPPING.pin.taper} µm over 50 mm at most (${LAPPING.source})`,
        'a lap does not take out lobes: look for them before',
        ...(fine ? ['stop just over size: no source says what the fine compound takes'] : []),
        ...(wanted !== undefined && !fine
          ? [`no source says what Ra this compound leaves: measure against Ra ${wanted}`]
          : []),
      ],
    }),
    ...(fine
      ? [
          step('fine', {
            action: `lap ${cut.feature} smooth`,
            depth: 0,
            time: 0,
            remarks: [
              `leaves Ra ${LAPPING.fineRa.least} to ${LAPPING.fineRa.most} (${LAPPING.source}); measure`,
              'until the marks of the first compound are gone: no source gives a rate, so no time is counted',
              'a clean ring of its own: one coarse grain scores the pin',
            ],
          }),
        ]
      : []),
  ]
}

type Stage = 'coarse' | 'fine'

/** Compounds in the grits of FEPA, as marked on the tin: `A F500`. */
const GRITS: Readonly<Record<Stage, readonly [number, number]>> = { coarse: [400, 600], fine: [800, 1200] }
/** A slit ring closes this far on its pin: common practice, no source. */
const CLOSES: Millimetre = 0.3

/** The longest ring on hand that fits the pin and the stage; a lap is soon made, so a missing one is only said. */
function ringLap(task: CuttingTask, cut: BandCut, stage: Stage): string {
  const [from, to] = GRITS[stage]
  const lap = toolsOf(task.shop, 'ring lap')
    .filter(({ diameter, length, grit }) => {
      const opens = diameter - cut.to
      return opens > -0.01 && opens <= CLOSES && length <= cut.length && grit >= from && grit <= to
    })
    .toSorted((a, b) => b.length - a.length)[0]
  if (lap) return `${lap.name}, ${lap.grade}`
  const bore = figure(cut.to, 4)
  task.report({
    code: 'cutting/no-lap',
    severity: 'note',
    message: `no ring lap on hand for ${bore} mm with F${from} to F${to} is ${figure(cut.length)} mm long at most`,
    hint: 'make one of soft cast iron, slit, bored to the pin and no longer than it, or list one under `tools:`',
    path: '/body/outside',
  })
  return `ring lap ${bore} mm, to be made, alumina F${from} to F${to}`
}
