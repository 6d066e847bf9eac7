import { type Finding, hasErrors } from '../finding.ts'
import { type Part, placeOf } from '../part/part.ts'
import { portKeyOf } from '../part/set-values.ts'
import { beginPlan } from '../plan/begin-plan.ts'
import { PORT_FIGURES, type PortFigure } from '../plan/port-figure.ts'
import { type PortSolved, SOLVED_KEYS, solvePort } from '../plan/solve-port.ts'
import type { Shop } from '../shop/shop.ts'
import { jsonText } from './json.ts'
import { type Loaded, load } from './load.ts'
import type { Options } from './options.ts'
import { PORTS } from './ports-room.ts'
import { reportBeside } from './report.ts'
import { sideBySide } from './side-by-side.ts'
import { changer } from './sweep-range.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

type Asked = { readonly path: string; readonly name: string; readonly figure: PortFigure; readonly wanted: number }

/** `exhaust.height:time-area=0.0152`: the value of one key of a port that gives the figure, then the ports with it. */
export function solveCommand(file: string, text: string, options: Options, world: World): number {
  const asked = askedOf(text)
  const loaded = load(file, options, world)
  const refuse = (findings: readonly Finding[]): number => {
    if (options.json)
      world.out(jsonText({ solve: { path: asked.path, figure: asked.name, wanted: asked.wanted }, findings }))
    reportBeside(findings, world)
    return STATUS.errors
  }
  if (!loaded.part || !loaded.shop || hasErrors(loaded.findings)) return refuse(loaded.findings)
  const solved = solvedOf(asked, loaded, loaded.part, loaded.shop)
  if ('findings' in solved) return refuse(solved.findings)
  const { value, gives } = solved
  const { unit, meaning } = asked.figure
  const words = `${asked.path}=${value} gives ${asked.name} ${Number(gives.toPrecision(5))} ${unit} (${meaning}); ${asked.wanted} is wanted, at ${Number(solved.exact.toFixed(5))} exactly.`
  const data = {
    solve: { path: asked.path, figure: asked.name, wanted: asked.wanted, exact: solved.exact, value, gives },
  }
  const set = [...(options.set ?? []), `${asked.path}=${value}`]
  return sideBySide(file, { ...options, set }, world, { room: PORTS, also: { words, data } })
}

function askedOf(text: string): Asked {
  const [, path = '', name = '', number = ''] = /^\s*(.+?)\s*:\s*([a-z-]+)\s*=\s*(-?[\d.]+)\s*$/.exec(text) ?? []
  const figure = Object.hasOwn(PORT_FIGURES, name) ? PORT_FIGURES[name] : undefined
  const wanted = Number(number)
  if (!figure || number === '' || !Number.isFinite(wanted)) {
    throw new UsageProblem(
      `--solve wants path:figure=value, as in exhaust.height:time-area=0.0152, with one of ${Object.keys(PORT_FIGURES).join(', ')}, got "${text}"`,
    )
  }
  return { path, name, figure, wanted }
}

type Exact = Extract<PortSolved, { readonly exact: number }>

function solvedOf(
  { path, name, figure, wanted }: Asked,
  loaded: Loaded,
  part: Part,
  shop: Shop,
): Exact | { readonly findings: readonly Finding[] } {
  const at = portKeyOf(path, loaded.texts.part)
  const port = part.ports.findIndex(port => at && port.path === `/ports/${at.index}`)
  const drawn = part.ports[port]
  const key = SOLVED_KEYS.find(key => key === at?.key)
  const place = drawn ? placeOf(part, `${drawn.path}/${at?.key}`) : { file: loaded.file, line: 1, column: 1 }
  const no = (message: string, hint: string): { readonly findings: readonly Finding[] } => ({
    findings: [{ code: 'input/no-solution', severity: 'error', message: `${path}: ${message}`, at: place, hint }],
  })
  if (!drawn || !key) {
    const [first] = part.ports
    // The second of a mirrored pair goes by the name of the first.
    const names = new Set(part.ports.map(({ name }) => name.replace(/, mirrored$/, '')))
    return no(
      `what is solved for is a port's ${SOLVED_KEYS.join(', ')}`,
      first ? `as in ${first.name}.height; the ports are ${[...names].join(', ')}` : 'the part has no ports',
    )
  }
  const present = drawn[key]
  if (present === undefined) {
    const given = SOLVED_KEYS.filter(other => drawn[other] !== undefined)
    return no(
      `the file does not give ${drawn.name} by its ${key}`,
      `it gives ${given.join(', ')}: solve for one of them`,
    )
  }
  const begun = beginPlan(part, shop, loaded.request)
  const asMilled = begun.rooms?.stock.asMilled
  if (!asMilled) return { findings: begun.findings }
  const changedTo = changer(path, loaded, part, shop)
  const solved = solvePort({ part, shop, asMilled, port, key, present, figure, wanted, changedTo })
  if ('exact' in solved) return solved
  const written = (value: number): string => String(Number(value.toPrecision(4)))
  const range = `no ${key} from ${written(solved.from)} to ${written(solved.to)}`
  if (!solved.reached)
    return no(
      `${range} gives a ${name}`,
      'a time-area wants an engine with its speed, a blowdown an exhaust and a transfer',
    )
  const { least, most } = solved.reached
  return no(
    `${range} gives ${name} ${wanted} ${figure.unit}: it runs from ${written(least)} to ${written(most)}`,
    'solve for another key, or for a value in between',
  )
}
