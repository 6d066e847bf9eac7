import type { Chucking } from '../../src/chucking.ts'
import type { Clocking } from '../../src/cutting/clocking.ts'
import type { OperationState } from '../../src/cutting/operation-state.ts'
import { type CuttingPlan, planCutting } from '../../src/cutting/plan-cutting.ts'
import type { OperationTime, Step } from '../../src/cutting/step.ts'
import type { Finding } from '../../src/finding.ts'
import type { FindingCode } from '../../src/finding-code.ts'
import type { OperationSize } from '../../src/operation-size.ts'
import type { Part } from '../../src/part/part.ts'
import type { PlannedPort, PortWindow } from '../../src/ports/port.ts'
import type { Process } from '../../src/process.ts'
import type { Operation, Purpose } from '../../src/route/operation.ts'
import type { Shape } from '../../src/shape.ts'
import type { Machine, Shop } from '../../src/shop/shop.ts'
import type { Tool } from '../../src/shop/tool.ts'
import type { Working } from '../../src/working.ts'
import { OWN_BORE_SHOP } from '../shop/own-bore-shop.ts'

const drawn = (nominal: number) => ({ nominal, lower: nominal, upper: nominal, written: String(nominal) })

/** HV of annealed and of tempered low-alloy steel: 200 and 285 HB by DIN 50150. */
export const ANNEALED = 210
export const TEMPERED = 300

export function partOf(changes: Partial<Part> = {}): Part {
  return {
    number: 'T-1',
    title: 'Liner',
    revision: 'A',
    kind: 'liner',
    material: { grade: '42CrMo4', written: '42CrMo4', hardness: TEMPERED },
    length: drawn(80),
    outside: [],
    bore: [],
    top: { path: '/body/top' },
    bottom: { path: '/body/bottom' },
    stock: {},
    ports: [],
    generalTolerance: 'm',
    waive: [],
    features: [],
    places: new Map(),
    file: 'test.yaml',
    ...changes,
  }
}

export const annealed = (): Part => partOf({ material: { grade: '42CrMo4', written: '42CrMo4', hardness: ANNEALED } })

/** A tube, or a bar where the bore is 0, 80 mm long. */
export const tube = (outside: number, bore: number, ported = false, length = 80): Shape => ({
  top: 0,
  bottom: length,
  outside: [{ name: 'seat', from: 0, to: length, diameter: outside }],
  bore: bore > 0 ? [{ name: 'bore', from: 0, to: length, diameter: bore }] : [],
  ported,
})

const AT: Readonly<Record<string, readonly [Process, string]>> = {
  'rough-turn': ['turn', 'lathe'],
  'finish-turn': ['turn', 'lathe'],
  'mill-ports': ['mill', 'mill'],
  'grind-outside': ['grind', 'cylindrical grinder'],
  'grind-bore': ['grind', 'internal grinder'],
  'grind-top': ['grind', 'internal grinder'],
  'hone-bore': ['hone', 'honing machine'],
}

export function stateOf(
  purpose: Purpose,
  before: Shape,
  after: Shape,
  sizes: readonly OperationSize[] = [],
): OperationState {
  const [process, workCentre] = AT[purpose] ?? ['inspect', 'inspection bench']
  const operation: Operation = {
    number: 10,
    purpose,
    name: purpose,
    process,
    place: 'house',
    workCentre,
    holding: '',
    locatedBy: [],
    surfaces: [],
    because: [],
    waits: [],
    cautions: [],
  }
  return { operation, sizes, before, after }
}

export const sizeOf = (feature: string, middle: number, tolerance: number, roughness?: number): OperationSize => ({
  feature,
  measure: 'diameter',
  nominal: middle,
  lower: middle - tolerance / 2,
  upper: middle + tolerance / 2,
  ...(roughness === undefined ? {} : { roughness }),
})

/** The works that grinds its own bores, with one machine changed, and tools added in front of its own. */
export const shopWith = (workCentre: string, changes: Partial<Machine>, tools: readonly Tool[] = []): Shop => ({
  ...OWN_BORE_SHOP,
  machines: OWN_BORE_SHOP.machines.map(machine =>
    machine.workCentre === workCentre ? { ...machine, ...changes } : machine,
  ),
  tools: [...tools, ...OWN_BORE_SHOP.tools],
})

export const withoutTools = (shop: Shop, ...kinds: readonly Tool['kind'][]): Shop => ({
  ...shop,
  tools: shop.tools.filter(({ kind }) => !kinds.includes(kind)),
})

export type Cut = {
  readonly steps: readonly Step[]
  readonly time: OperationTime
  readonly findings: readonly Finding[]
  readonly workings: readonly Working[]
  readonly codes: readonly FindingCode[]
  readonly clocking?: Clocking
  readonly chuckings: readonly Chucking[]
  readonly places: CuttingPlan['places']
}

/** One operation planned alone. */
export function cut(
  part: Part,
  state: OperationState,
  shop: Shop = OWN_BORE_SHOP,
  ports: readonly PlannedPort[] = [],
  start = 24,
): Cut {
  const { steps, time, findings, workings, clocking, chuckings, places } = planCutting({
    part,
    shop,
    states: [state],
    ports,
    start,
  })
  const spent = time.get(10)
  if (!spent) throw new Error('no time')
  const codes = findings.map(({ code }) => code)
  return {
    steps: steps.get(10) ?? [],
    time: spent,
    findings,
    workings,
    codes,
    chuckings: chuckings.get(10) ?? [],
    places,
    ...(clocking && { clocking }),
  }
}

export function step(steps: readonly Step[], action: string): Step {
  const found = steps.find(known => known.action.startsWith(action))
  if (!found) throw new Error(`no step "${action}" among ${steps.map(known => known.action).join('; ')}`)
  return found
}

/** So large that its wall is flat to a tenth of a micrometre over the window. */
const FLAT = 1e8

/** A rectangle of machine X and Y with rounded corners, counter-clockwise. */
export function rounded(width: number, height: number, corner: number): PortWindow['outline']['cutterPlane'] {
  const [x, y] = [height / 2 - corner, width / 2 - corner]
  const corners = [
    [x, y],
    [-x, y],
    [-x, -y],
    [x, -y],
  ]
  return corners.flatMap(([cx = 0, cy = 0], i) =>
    Array.from({ length: 33 }, (_, step) => {
      const angle = ((i + step / 32) * Math.PI) / 2
      return { x: cx + corner * Math.cos(angle), y: cy + corner * Math.sin(angle) }
    }),
  )
}

/** A window in a flat wall of 3 mm: levels go down that far and 0.3 beyond. Its entry hole lies on the slot round it. */
export function windowOf(changes: Partial<PortWindow> = {}): PortWindow {
  return {
    at: 0,
    rotary: 0,
    tilt: 0,
    crossOffset: 0,
    x: 0,
    z: 0,
    area: { window: 80, flow: 80 },
    width: 10,
    height: 8,
    entryHole: { diameter: 2.2, x: 0, y: 3.9, room: 1.5 },
    edges: { finished: { highest: 36, lowest: 44 }, asCut: { highest: 36, lowest: 44 } },
    cutter: 2,
    largestCutter: 2.4,
    tools: { cutter: 'end mill 2', drill: 'drill 2.2' },
    tightestCorner: 1.5,
    walls: { outside: FLAT + 3, bore: FLAT, finished: FLAT },
    plunge: { zTop: 3, zThrough: 0, zFarWall: -50, wall: 3 },
    pathLength: 24 + Math.PI,
    outline: { finished: [], asCut: [], outside: [], cutterPlane: rounded(10, 8, 1.5) },
    ...changes,
  }
}

export function portOf(windows: readonly PortWindow[], changes: Partial<PlannedPort> = {}): PlannedPort {
  return {
    name: 'exhaust',
    role: 'exhaust',
    at: 0,
    up: 0,
    back: 0,
    cut: 'level',
    top: 36,
    bottom: 44,
    height: 8,
    width: 10,
    arc: 20,
    corner: 1.5,
    area: { window: 80, flow: 80 },
    windows,
    ...changes,
  }
}
