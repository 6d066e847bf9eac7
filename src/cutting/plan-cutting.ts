import type { Chucking } from '../chucking.ts'
import type { PlannedFeature } from '../features/feature-plan.ts'
import type { Finding } from '../finding.ts'
import { SPECIFIC_FORCE_SOURCE } from '../handbook/specific-force.ts'
import { type Part, placeOf } from '../part/part.ts'
import type { Grip } from '../ports/grip.ts'
import type { PlannedPort } from '../ports/port.ts'
import type { Purpose } from '../route/operation.ts'
import type { Shop } from '../shop/shop.ts'
import { openNotebook, type Working } from '../working.ts'
import type { Clocking } from './clocking.ts'
import { type CuttingMaterial, cuttingMaterial } from './cutting-material.ts'
import type { CutsPlanner } from './cutting-task.ts'
import { millFeatures } from './feature-milling.ts'
import { finishTurn } from './finish-held.ts'
import { grindBore } from './grinding-bore.ts'
import { grindTop } from './grinding-face.ts'
import { grindOutside } from './grinding-outside.ts'
import { crackTest, deburrPorts, deburrSoft, inspect } from './hand-work.ts'
import { honeBore } from './honing-bore.ts'
import { lapOutside } from './lapping-outside.ts'
import type { MillingGrip } from './milling-grip.ts'
import type { OperationState } from './operation-state.ts'
import { operationTime } from './operation-time.ts'
import { borePin, turnInside } from './piston-cuts.ts'
import type { PlacedPort } from './place-round.ts'
import { millPorts } from './port-milling.ts'
import { roughAndFinish } from './rough-and-finish.ts'
import { roughTurn } from './rough-turning.ts'
import { sawBlanks } from './sawing.ts'
import type { SetUp } from './set-up.ts'
import type { OperationTime, Step } from './step.ts'

export type CuttingPlan = {
  /** By operation number; an operation that has none is not here. */
  readonly steps: ReadonlyMap<number, readonly Step[]>
  readonly time: ReadonlyMap<number, OperationTime>
  /** Of turning and grinding, by operation number. */
  readonly chuckings: ReadonlyMap<number, readonly Chucking[]>
  /** Of the milling of ports, in the order of cutting. */
  readonly setUps: readonly SetUp[]
  readonly clocking?: Clocking
  readonly millingGrip?: MillingGrip
  /** Of the ports, what moves each round the bore. */
  readonly places: readonly PlacedPort[]
  readonly findings: readonly Finding[]
  readonly workings: readonly Working[]
}

/** How each operation that a works does itself is cut. Furnaces cut nothing. */
const PLANNERS: Readonly<Partial<Record<Purpose, CutsPlanner>>> = {
  'saw-blanks': sawBlanks,
  'rough-turn': roughTurn,
  'finish-turn': finishTurn,
  turn: roughAndFinish,
  'mill-ports': millPorts,
  'mill-features': millFeatures,
  'turn-inside': turnInside,
  'bore-pin': borePin,
  'deburr-soft': deburrSoft,
  'deburr-ports': deburrPorts,
  'grind-outside': grindOutside,
  'grind-bore': grindBore,
  'grind-top': grindTop,
  'hone-for-plating': honeBore,
  'hone-bore': honeBore,
  'lap-outside': lapOutside,
  'crack-test': crackTest,
  'final-inspection': inspect,
}

const OUTSIDE: OperationTime = { setup: 0, each: 0, batch: 0 }

/**
 * Tools, speeds, feeds, passes, forces and times of every operation done in the house: starting values with a spread of ±30
 * to 50 %, never a promise. What goes outside has no steps and takes none of the works' minutes.
 */
export function planCutting({
  part,
  shop,
  states,
  ports,
  features = [],
  start,
  grip,
}: {
  readonly part: Part
  readonly shop: Shop
  readonly states: readonly OperationState[]
  readonly ports: readonly PlannedPort[]
  readonly features?: readonly PlannedFeature[]
  /** Pieces started. */
  readonly start: number
  readonly grip?: Grip | undefined
}): CuttingPlan {
  const notebook = openNotebook()
  const { material, findings: unknown } = cuttingMaterial(part)
  const findings: Finding[] = [...unknown]
  const steps = new Map<number, readonly Step[]>()
  const time = new Map<number, OperationTime>()
  const chuckings = new Map<number, readonly Chucking[]>()
  const setUps: SetUp[] = []
  const places: PlacedPort[] = []
  let clocking: Clocking | undefined
  let millingGrip: MillingGrip | undefined
  if (material) noteMaterial(material, notebook)

  const fineBored = new Set(
    states.flatMap(({ operation: { process, locatedAs, surfaces } }) =>
      process === 'hone' && locatedAs === 'turned' ? surfaces : [],
    ),
  )
  for (const state of states) {
    const { operation } = state
    const plan = PLANNERS[operation.purpose]
    const machine = shop.machines.find(({ workCentre }) => workCentre === operation.workCentre)
    if (operation.place === 'outside' || !plan || !machine || !material) {
      time.set(operation.number, OUTSIDE)
      continue
    }
    const cuts = plan({
      ...state,
      part,
      shop,
      ports,
      features,
      ...(grip ? { grip } : {}),
      fineBored,
      start,
      machine,
      material,
      notebook,
      report: ({ path = '', ...finding }) => {
        findings.push({ ...finding, at: placeOf(part, path) })
      },
    })
    steps.set(operation.number, cuts.steps)
    if (cuts.chuckings) chuckings.set(operation.number, cuts.chuckings)
    setUps.push(...(cuts.setUps ?? []))
    places.push(...(cuts.places ?? []))
    clocking = cuts.clocking ?? clocking
    millingGrip = cuts.grip ?? millingGrip
    time.set(operation.number, operationTime(machine, cuts, start))
  }
  return {
    steps,
    time,
    chuckings,
    setUps,
    ...(clocking && { clocking }),
    ...(millingGrip && { millingGrip }),
    places,
    findings: withoutRepeats(findings),
    workings: notebook.workings,
  }
}

/** Two windows that want for the same thing say so once. */
const withoutRepeats = (findings: readonly Finding[]): readonly Finding[] =>
  findings.filter(
    ({ code, message }, index) =>
      findings.findIndex(other => other.code === code && other.message === message) === index,
  )

function noteMaterial({ grade, family, HB, force }: CuttingMaterial, notebook: ReturnType<typeof openNotebook>): void {
  notebook.note({
    about: 'material',
    symbol: 'HB',
    meaning: `hardness that ${grade} is cut at, as ${family}, material group ${force.group}`,
    value: HB,
    unit: 'HB',
    expression: '',
    source: `the part file, converted by DIN 50150, else the hard end of the grade's usual range; group: ${SPECIFIC_FORCE_SOURCE}`,
  })
}
