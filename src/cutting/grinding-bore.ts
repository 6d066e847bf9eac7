import { barStiffness, ELASTIC_MODULUS } from '../handbook/boring-bar.ts'
import { equivalentDiameterInside, grindingStroke } from '../handbook/grinding.ts'
import { LONGEST_QUILL, PORTED_BORE, WHEEL_IN_BORE, WHEEL_SPEED } from '../handbook/grinding-data.ts'
import { told } from '../known.ts'
import type { InternalWheel } from '../shop/tool.ts'
import { handOrGet } from '../shop/tools-to-get.ts'
import type { Millimetre } from '../units.ts'
import type { CuttingTask, PlannedCuts } from './cutting-task.ts'
import { dressing } from './dressing.ts'
import { figure } from './figure.ts'
import { faceGrinding } from './grinding-face.ts'
import { grindingSetting, startingWheel } from './ground-work.ts'
import { watchPorts } from './ports-and-wheel.ts'
import type { Step } from './step.ts'
import { sayToGet } from './to-get.ts'
import { traverseGrinding, wheelSpin } from './traverse-grinding.ts'
import { type BandCut, boreCuts } from './turned-cuts.ts'
import { AS_CUT, ofTool, PRACTICE } from './where-from.ts'

/** The spindle nose stays this far off the work. Common practice, no source. */
const NOSE_CLEARANCE: Millimetre = 2

/** Grinds the bore bands that change, and the faces that change with them. */
export function grindBore(task: CuttingTask): PlannedCuts {
  const steps = boreCuts(task.before, task.after).flatMap(cut => grindBand(task, cut))
  return { steps: [...steps, ...faceGrinding(task)] }
}

function grindBand(task: CuttingTask, cut: BandCut): readonly Step[] {
  const { notebook, operation, before } = task
  const about = { operation: operation.number, about: cut.feature }
  const wheel = wheelFor(task, cut)
  if (!wheel) return []
  const spin = wheelSpin(task, wheel, WHEEL_SPEED.bore)
  const overrun = PORTED_BORE.overrun * wheel.width
  const given = {
    ...told(AS_CUT, { L: cut.length }),
    ...told(PRACTICE, { ov: overrun }),
    ...told(ofTool(task, wheel), { b: wheel.width }),
  }
  const stroke = Math.max(notebook.use(grindingStroke, given, about), overrun)
  if (before.ported) watchPorts(task, cut, wheel.width)
  const stiffness = quillStiffness(task, cut, wheel, overrun)
  return [
    ...traverseGrinding(task, {
      feature: cut.feature,
      where: 'bore',
      diameter: cut.to,
      stock: cut.to - cut.from,
      stroke,
      wheel,
      spin,
      setting: grindingSetting(task, 'bore'),
      equivalentDiameter: notebook.use(
        equivalentDiameterInside,
        { ...told(AS_CUT, { dw: cut.from }), ...told(ofTool(task, wheel), { q: wheel.diameter / cut.from }) },
        about,
      ),
      ...(stiffness === undefined ? {} : { bend: 1 / stiffness }),
      remarks: [
        startingWheel(task, 'bore'),
        `overrun ${figure(overrun)} mm at each end: less leaves the ends tight, more bells them`,
        ...(before.ported
          ? ['no dwell and no reversal over the ports; port edges broken before; one grade harder if the wheel rounds']
          : []),
      ],
    }),
    ...dressing(task, wheel),
  ]
}

function wheelFor(task: CuttingTask, cut: BandCut): InternalWheel | undefined {
  const wheel = handOrGet(task.shop, 'internal wheel', list => {
    const wheels = list.toSorted((a, b) => b.diameter - a.diameter)
    const best = wheels.find(({ diameter }) => diameter <= WHEEL_IN_BORE.most * cut.from + 1e-9)
    return best ?? wheels.findLast(({ diameter }) => diameter < WHEEL_IN_BORE.burns * cut.from)
  })
  if (wheel) sayToGet(task, wheel, `for ${cut.feature} of ${figure(cut.from, 4)} mm`)
  if (!wheel) {
    task.report({
      code: 'cutting/no-wheel',
      severity: 'error',
      message: `no internal wheel that is sold goes into a bore of ${figure(cut.from, 4)} mm: ${figure(WHEEL_IN_BORE.least * cut.from)} to ${figure(WHEEL_IN_BORE.most * cut.from)} mm is right`,
      hint: 'lap it, or have it made by agreement',
      path: '/body/bore',
    })
    return undefined
  }
  const ratio = wheel.diameter / cut.from
  if (ratio > WHEEL_IN_BORE.most + 1e-9 || ratio < WHEEL_IN_BORE.least) {
    task.report({
      code: 'cutting/wheel-and-bore',
      severity: 'warning',
      message: `${wheel.name} is ${figure(ratio)} of the bore; ${WHEEL_IN_BORE.least} to ${WHEEL_IN_BORE.most} is right: over it the coolant is starved, under it the quill is weak`,
      hint: `a wheel of ${figure(WHEEL_IN_BORE.least * cut.from)} to ${figure(WHEEL_IN_BORE.most * cut.from)} mm`,
      path: '/body/bore',
    })
  }
  return wheel
}

/** N/µm, of a steel quill that takes the wheel through to its overrun at the far end. */
function quillStiffness(
  task: CuttingTask,
  cut: BandCut,
  wheel: InternalWheel,
  overrun: Millimetre,
): number | undefined {
  const { notebook, operation, report } = task
  const { name, width, quill } = wheel
  if (!quill) return undefined
  const needed = cut.length + overrun - width + NOSE_CLEARANCE
  if (needed > quill.length || quill.length > LONGEST_QUILL.steel * quill.diameter) {
    const message =
      needed > quill.length
        ? `the quill of ${name} is ${figure(quill.length)} mm long; the band needs ${figure(needed)} mm`
        : `the quill of ${name} stands out ${figure(quill.length / quill.diameter)} diameters; ${LONGEST_QUILL.steel} is the most in steel`
    const hint = `a thicker or carbide quill of ${figure(needed)} mm, or grind from both ends`
    report({ code: 'cutting/quill-overhang', severity: 'warning', message, hint, path: '/body/bore' })
  }
  const given = {
    ...told(ofTool(task, wheel), { L: Math.max(quill.length, needed), d: quill.diameter }),
    ...told(PRACTICE, { E: ELASTIC_MODULUS.quillSteel }),
  }
  return notebook.use(barStiffness, given, { operation: operation.number, about: cut.feature })
}
