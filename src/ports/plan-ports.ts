import { bandAt } from '../band.ts'
import type { Chucking } from '../chucking.ts'
import type { Finding } from '../finding.ts'
import { anglePerTenth } from '../handbook/port-window.ts'
import type { OperationSize } from '../operation-size.ts'
import { type Part, type Port, placeOf } from '../part/part.ts'
import type { Shop } from '../shop/shop.ts'
import type { AsMilled } from '../stock/stock.ts'
import type { Millimetre } from '../units.ts'
import { type Notebook, openNotebook, type Working } from '../working.ts'
import type { CheckedPort } from './checks/port-check.ts'
import { runChecks } from './checks/run-checks.ts'
import { fixtureBodies } from './fixture-bodies.ts'
import { fixtureFindings } from './fixture-findings.ts'
import { type FixturePlan, planFixture } from './fixture-plan.ts'
import type { GasExchange } from './gas-exchange.ts'
import { chuckingIn, gripOf } from './grip.ts'
import type { Body } from './height-under.ts'
import { inletTiming } from './inlet-timing.ts'
import { noteAsCut } from './note-as-cut.ts'
import { planGasExchange } from './plan-gas-exchange.ts'
import { planWindow } from './plan-window.ts'
import type { PlannedPort } from './port.ts'
import { designPort, type PortDesign } from './port-design.ts'
import { portEdges } from './port-edges.ts'
import { type PortFault, portFinding } from './port-finding.ts'
import { portSizes } from './port-sizes.ts'
import { curveOf, type TimedPort, timedPort } from './timed-port.ts'
import { type Crank, crankOf, crankTurns } from './timing.ts'
import { topStockAt } from './top-stock-at.ts'
import { wallsAsMilled } from './walls-as-milled.ts'

export type PortsPlanned = {
  readonly ports: readonly PlannedPort[]
  /** As milled, and as the finished ports must measure. */
  readonly sizes: readonly OperationSize[]
  readonly finished: readonly OperationSize[]
  readonly findings: readonly Finding[]
  readonly workings: readonly Working[]
  /** Absent without an engine, or when no port is timed by the crown. */
  readonly gasExchange?: GasExchange
  /** Both absent without ports. */
  readonly fixture?: FixturePlan
  readonly chuckings?: readonly Chucking[]
}

/** Every port's edges, timing, areas and cutter, and the fixture setting of every window. */
export function planPorts(part: Part, shop: Shop, asMilled: AsMilled): PortsPlanned {
  const notebook = openNotebook()
  const { engine } = part
  if (engine && !crankTurns(engine)) return locked(part)
  const crank = engine && crankOf(engine, notebook)
  const grip = gripOf(shop, asMilled)
  const bodies = fixtureBodies(shop.fixture, asMilled, grip.chuckFace)
  const planned = part.ports.map(port => planPort({ part, port, shop, asMilled, bodies, crank, notebook }))
  const checked = planned.flatMap(({ port: planned }, i) => {
    const port = part.ports[i]
    return planned && port ? [{ port, planned }] : []
  })
  const timed = planned.flatMap(({ timed }) => (timed ? [timed] : []))
  const bore = boreOf(part, timed)
  const gasExchange =
    engine && crank && bore !== undefined ? planGasExchange({ engine, crank, bore, timed, notebook }) : undefined
  const all = checked.map(({ planned }) => withMirror(planned, part, checked))
  const { habits } = shop
  const sizes = checked.map(({ port, planned }) =>
    portSizes({ port, planned, topStock: topStockAt(asMilled, planned.top), habits }),
  )
  const fixture =
    all.length === 0
      ? undefined
      : planFixture({ ports: all, shop, asMilled, grip, bodies, longest: longestOf(all), notebook })
  return {
    ...(fixture ? { fixture, chuckings: [chuckingIn(grip)] } : {}),
    ...(gasExchange ? { gasExchange } : {}),
    ports: all,
    sizes: sizes.flatMap(({ milled }) => milled),
    finished: sizes.flatMap(({ finished }) => finished),
    findings: [
      ...planned.flatMap(({ findings }) => findings),
      ...runChecks({ part, shop, asMilled, ports: checked, gasExchange }),
      ...(fixture ? fixtureFindings(part, fixture) : []),
    ],
    workings: notebook.workings,
  }
}

/** Stick-out of the longest tool that mills or drills a port. */
const longestOf = (ports: readonly PlannedPort[]): Millimetre =>
  Math.max(
    ...ports.flatMap(({ windows }) =>
      windows.flatMap(({ held, roughing, drillHeld }) =>
        [held, roughing?.held, drillHeld].map(tool => tool?.stickOut ?? 0),
      ),
    ),
  )

/** Finished bore that the crown runs in, where it times a port. */
function boreOf({ bore }: Part, timed: readonly TimedPort[]): Millimetre | undefined {
  const top = timed[0]?.planned.top
  return top === undefined ? undefined : bandAt(bore, top)?.size.nominal
}

/** A port with the differences from the one that it is the mirror image of. */
function withMirror(planned: PlannedPort, part: Part, all: readonly CheckedPort[]): PlannedPort {
  const { mirrorOf } = part.ports.find(({ name, at }) => name === planned.name && at === planned.at) ?? {}
  const other = all.find(({ planned: { name, at } }) => name === mirrorOf && at !== planned.at)?.planned
  if (!other) return planned
  const leftRight = {
    top: planned.top - other.top,
    bottom: planned.bottom - other.bottom,
    arc: planned.arc - other.arc,
  }
  return { ...planned, leftRight }
}

const locked = (part: Part): PortsPlanned => ({
  ports: [],
  sizes: [],
  finished: [],
  findings: [
    {
      code: 'ports/linkage-locks',
      severity: 'error',
      message: `a rod of ${part.engine?.rod} mm cannot carry a stroke of ${part.engine?.stroke} mm with a pin offset of ${part.engine?.pinOffset} mm past a quarter turn`,
      at: placeOf(part, '/engine/rod'),
      hint: 'give the rod from centre to centre; it is longer than the throw and the offset together',
    },
  ],
  workings: [],
})

type Planned = {
  readonly port?: PlannedPort
  readonly timed?: TimedPort
  readonly findings: readonly Finding[]
}

function planPort({
  part,
  port,
  shop,
  asMilled,
  bodies,
  crank,
  notebook,
}: {
  readonly part: Part
  readonly port: Port
  readonly shop: Shop
  readonly asMilled: AsMilled
  readonly bodies: readonly Body[]
  readonly crank: Crank | undefined
  readonly notebook: Notebook
}): Planned {
  const found = (faults: readonly PortFault[]): readonly Finding[] =>
    faults.map(fault => portFinding(part, port, fault))
  const edges = portEdges(part, port, crank, notebook)
  if (!('value' in edges)) return { findings: found(edges.faults) }
  const designed = designPort(part, port, edges.value)
  if (!('value' in designed)) return { findings: found(designed.faults) }
  const design = designed.value
  const walls = wallsAsMilled(part, design, asMilled)
  if (!('value' in walls)) return { findings: found(walls.faults) }
  const windows = design.windows.map(window =>
    planWindow({ port, design, window, shop, asCut: walls.value, bodies, notebook }),
  )
  const shift = noteAsCut({ port, design, asCut: walls.value, crank, notebook })
  const faults = [...walls.faults, ...cornerNote(port), ...distinct(windows.flatMap(window => window.faults))]
  const planned: PlannedPort = {
    name: port.name,
    role: port.role,
    at: port.at,
    up: port.up,
    back: port.back,
    cut: port.cut,
    ...timingOf(port, design, crank, notebook),
    ...inletTiming(part.engine, port, design.bottom, crank),
    top: design.top,
    bottom: design.bottom,
    height: design.height,
    width: design.width,
    arc: design.arc,
    corner: port.corner.radius,
    area: {
      window: sum(windows.map(({ window }) => window.area.window)),
      flow: sum(windows.map(({ window }) => window.area.flow)),
    },
    windows: windows.map(({ window }) => window),
    ...shift,
  }
  const timed = crank && timedPort(planned, design, crank)
  const uncovered = timed ? { uncovered: curveOf([timed]) } : {}
  return {
    port: { ...planned, ...uncovered },
    ...(timed ? { timed } : {}),
    findings: found(faults),
  }
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/** Both windows of a bridged port have the same fault once. */
const distinct = (faults: readonly PortFault[]): readonly PortFault[] =>
  faults.filter((fault, i) => faults.findIndex(({ message }) => message === fault.message) === i)

type Timing = Pick<PlannedPort, 'opens' | 'closes' | 'duration' | 'dAnglePerTenth'>

/** By the crown's edge. An inlet is opened by the skirt. */
function timingOf(port: Port, { top }: PortDesign, crank: Crank | undefined, notebook: Notebook): Timing {
  if (!crank || port.role === 'inlet') return {}
  const about = { about: port.name }
  const opens = port.opens ?? crank.opensAt(top, about)
  const closes = crank.closesAt(top, about)
  const dx_dtheta = crank.perDegree(opens, about)
  return { opens, closes, duration: closes - opens, dAnglePerTenth: notebook.use(anglePerTenth, { dx_dtheta }, about) }
}

function cornerNote(port: Port): readonly PortFault[] {
  if (port.cut === 'level' || port.corner.on === 'cutter' || port.up === 0) return []
  const message = `a straight cut has its corners in the cutter's plane: ${port.corner.radius} mm is taken there`
  return [
    {
      code: 'ports/corner-in-cutter-plane',
      severity: 'note',
      message,
      hint: `write \`corner: {cut: ${port.corner.radius}}\``,
      key: 'corner',
    },
  ]
}
