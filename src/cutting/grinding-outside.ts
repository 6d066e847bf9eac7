import { equivalentDiameterOutside, grindingStroke } from '../handbook/grinding.ts'
import { PORTED_BORE, WHEEL_SPEED } from '../handbook/grinding-data.ts'
import { told } from '../known.ts'
import { toolsOf } from '../shop/tool.ts'
import type { Millimetre } from '../units.ts'
import { centresIn, type Held, inChuckings } from './chuckings.ts'
import type { CuttingTask, PlannedCuts } from './cutting-task.ts'
import { dressing } from './dressing.ts'
import { faceGrinding } from './grinding-face.ts'
import { grindThrough } from './grinding-through.ts'
import { grindingSetting, startingWheel } from './ground-work.ts'
import { traverseGrinding, type Wheel, wheelSpin } from './traverse-grinding.ts'
import { type BandCut, outsideCuts } from './turned-cuts.ts'
import { AS_CUT, ofTool, PRACTICE } from './where-from.ts'

/** Grinds the outside bands that change, between centres, on a mandrel, or through a centreless grinder. */
export function grindOutside(task: CuttingTask): PlannedCuts {
  if (task.operation.heldIn === 'work blade') return grindThrough(task)
  const cuts = outsideCuts(task.before, task.after)
  const wheel = cuts.length > 0 ? largestWheel(task) : undefined
  if (!wheel) return { steps: faceGrinding(task) }
  const spin = wheelSpin(task, wheel, WHEEL_SPEED.outside)
  const setting = grindingSetting(task, 'outside')
  const steps = cuts.flatMap(cut => {
    const { notebook, operation } = task
    const about = { operation: operation.number, about: cut.feature }
    const freeEnds = [cut.top, cut.bottom].filter(depth => !blocked(task, cut, depth)).length
    // A wheel wider than the band still swings a little to even its wear.
    const overrun = PORTED_BORE.overrun * wheel.width
    const wheelOf = ofTool(task, wheel)
    const given = {
      ...told(AS_CUT, { L: cut.length }),
      ...told(PRACTICE, { ov: (overrun * freeEnds) / 2 }),
      ...told(wheelOf, { b: wheel.width }),
    }
    const stroke = Math.max(notebook.use(grindingStroke, given, about), overrun)
    return traverseGrinding(task, {
      feature: cut.feature,
      where: 'outside',
      diameter: cut.from,
      stock: cut.from - cut.to,
      stroke,
      wheel,
      spin,
      setting,
      equivalentDiameter: notebook.use(
        equivalentDiameterOutside,
        { ...told(wheelOf, { ds: wheel.diameter }), ...told(AS_CUT, { dw: cut.from }) },
        about,
      ),
      remarks: [
        startingWheel(task, 'outside'),
        ...(freeEnds < 2 ? ['dwell one turn at the shoulder, do not run into it'] : []),
      ],
    })
  })
  return inChuckings([{ chucking: groundOn(task), steps: [...steps, ...dressing(task, wheel), ...faceGrinding(task)] }])
}

/** On a mandrel in the bore, or between the centres that the part brings along. */
function groundOn({ operation, after, part, shop }: CuttingTask): Held['chucking'] {
  const clocking = `set true within ${operation.setTrue ?? shop.habits.mandrelRunout} mm off axis`
  if (operation.heldIn === 'centres') {
    const surface = centresIn(part)
    return {
      end: 'bottom',
      grip: { surface, length: 0 },
      stop: 'the centre, with a driver',
      heldWith: 'centres',
      clocking,
    }
  }
  const surface = part.bore[0]?.name ?? 'bore'
  const length = after.bottom - after.top
  const stop = "the mandrel's shoulder, top face home"
  return { end: 'bottom', grip: { surface, length }, stop, heldWith: 'expanding mandrel', clocking }
}

/** Whether a larger band stands against this end. */
const blocked = ({ after }: CuttingTask, cut: BandCut, depth: Millimetre): boolean =>
  after.outside.some(
    band => band.diameter > cut.to + 1e-6 && (Math.abs(band.from - depth) < 1e-6 || Math.abs(band.to - depth) < 1e-6),
  )

function largestWheel(task: CuttingTask): Wheel | undefined {
  const wheel = toolsOf(task.shop, 'grinding wheel').toSorted((a, b) => b.diameter - a.diameter)[0]
  if (!wheel) {
    task.report({
      code: 'cutting/no-wheel',
      severity: 'error',
      message: 'the works grinds the outside but has no grinding wheel',
      hint: 'list one with its diameter and width under `tools:` in the shop file',
    })
  }
  return wheel
}
