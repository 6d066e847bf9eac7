import { fixed } from '../figures.ts'
import type { Plan } from '../plan/plan.ts'
import { planPath } from '../ports/path/plan-path.ts'
import type { PlannedPort, PortWindow } from '../ports/port.ts'
import type { NcWords, Shop } from '../shop/shop.ts'
import type { AsMilled } from '../stock/stock.ts'
import type { Degree, Millimetre, MillimetrePerMinute, SpindleSpeed } from '../units.ts'
import { type CuttingData, cuttingDataOf } from './cutting-data.ts'
import { safeHeight } from './safe-height.ts'
import { writeProgram } from './write-program.ts'

export type NcProgram = { readonly name: string; readonly text: string }

export type NcRequest = {
  readonly part: { readonly number: string; readonly revision: string }
  readonly ports: readonly PlannedPort[]
  readonly shop: Pick<Shop, 'fixture' | 'name'> & { readonly ncWords?: NcWords }
  readonly asMilled: AsMilled
  readonly fingerprint: string
  readonly data: (tool: 'end mill' | 'drill', diameter: Millimetre, name: string | undefined) => CuttingData
  readonly slug?: 'cleared' | 'kept'
}

/** One window with the port that it belongs to. */
export type NcWindow = { readonly port: PlannedPort; readonly window: PortWindow; readonly number: number }

/** One set-up: one tilt, one cutter. */
export type SetUp = {
  readonly kind: 'drill' | 'mill'
  readonly tilt: Degree
  readonly cutter: Millimetre
  readonly tool: number
  readonly toolName: string | undefined
  readonly windows: readonly NcWindow[]
}

export type { CuttingData, MillimetrePerMinute, SpindleSpeed }

/** The programs of ISO 6983 that drill and mill every window, by tilt, drill before mill. */
export function ncProgramsFor(request: NcRequest): readonly NcProgram[] {
  const { part, shop, asMilled } = request
  return setUpsOf(request.ports).map(setUp => {
    const data = request.data(setUp.kind === 'drill' ? 'drill' : 'end mill', setUp.cutter, setUp.toolName)
    const choice = { depth: data.depth, ...(request.slug === undefined ? {} : { slug: request.slug }) }
    const windows = setUp.windows.map(item =>
      setUp.kind === 'mill' ? { ...item, path: planPath(item.window, choice) } : item,
    )
    const safe = safeHeight(shop.fixture, asMilled, setUp.tilt)
    const tilt = fixed(setUp.tilt, 3).replace('-', 'm').replace('.', '_')
    return {
      name: `${part.number}-${part.revision}-tilt-${tilt}-${setUp.kind}-${fixed(setUp.cutter, 2).replace('.', '_')}.nc`,
      text: writeProgram({ request, setUp, windows, data, safe }),
    }
  })
}

/** The same from a whole plan: the cutting data are those of its milling, where a step names the tool. */
export function ncPrograms(plan: Plan, shop: Shop): readonly NcProgram[] {
  const milling = plan.operations.find(({ purpose }) => purpose === 'mill-ports')
  if (!milling || plan.ports.length === 0) return []
  const { shape } = milling
  return ncProgramsFor({
    part: plan.part,
    ports: plan.ports,
    shop,
    asMilled: { boreDiameter: shape.bore[0]?.diameter ?? 0, shape, topStock: -shape.top },
    fingerprint: plan.fingerprint,
    data: (tool, diameter, name) => cuttingDataOf(milling.steps, tool, diameter, name),
  })
}

function setUpsOf(ports: readonly PlannedPort[]): readonly SetUp[] {
  const windows = ports.flatMap(port => port.windows.map((window, i) => ({ port, window, number: i + 1 })))
  const tilts = distinct(windows.map(({ window }) => window.tilt)).toSorted(
    (a, b) => Math.abs(a) - Math.abs(b) || a - b,
  )
  const tools: string[] = []
  return tilts.flatMap((tilt, turn) => {
    const way = turn % 2 === 0 ? 1 : -1
    const here = windows
      .filter(({ window }) => window.tilt === tilt)
      .toSorted((a, b) => way * (a.window.rotary - b.window.rotary) || a.number - b.number)
    return (['drill', 'mill'] as const).flatMap(kind => {
      const diameterOf = ({ window }: NcWindow): number =>
        kind === 'drill' ? window.entryHole.diameter : window.cutter
      return distinct(here.map(diameterOf)).map((cutter): SetUp => {
        const own = here.filter(item => diameterOf(item) === cutter)
        const toolName = kind === 'drill' ? own[0]?.window.tools?.drill : own[0]?.window.tools?.cutter
        const key = `${kind} ${cutter}`
        if (!tools.includes(key)) tools.push(key)
        return { kind, tilt, cutter, tool: tools.indexOf(key) + 1, toolName, windows: own }
      })
    })
  })
}

const distinct = (values: readonly number[]): readonly number[] => [...new Set(values)]
