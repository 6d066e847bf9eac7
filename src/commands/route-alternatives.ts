import { fixed, minutes } from '../figures.ts'
import { type OtherRoute, planOtherRoutes, routeFigures } from '../plan/other-routes.ts'
import type { Plan } from '../plan/plan.ts'
import type { Options } from './options.ts'
import { planFile, requestOf } from './plan-file.ts'
import { heading, route } from './route.ts'
import { table } from './table.ts'
import { showPlanned, type View } from './view.ts'
import type { World } from './world.ts'

/** The route as planned beside the next best. */
export function routeAlternatives(file: string, most: number, options: Options, world: World): number {
  const { loaded, ...planned } = planFile(file, options, world)
  const { part, shop } = loaded
  const others = planned.plan && part && shop ? planOtherRoutes(requestOf(part, shop, loaded, world), most) : []
  return showPlanned(planned, options, world, viewOf(others))
}

const viewOf = (others: readonly OtherRoute[]): View => ({
  data: (plan, options) => ({
    planned: { ...Object(route.data(plan, options)), figures: routeFigures(plan), stock: plan.stock, case: plan.case },
    alternatives: others.map(({ plan: { operations, stock, case: ordered }, ...other }) => ({
      ...other,
      operations,
      stock,
      case: ordered,
    })),
  }),
  text: plan =>
    [heading(plan), sideBySide(plan, others), ...others.map((other, index) => told(plan, other, index + 1))].join('\n'),
})

function sideBySide(plan: Plan, others: readonly OtherRoute[]): string {
  if (others.length === 0)
    return 'The rules allow no other order, and no rule that could be given up changes it. route --why N has the rules of one operation.\n'
  const all = [{ plan, figures: routeFigures(plan) }, ...others]
  const surfaces = [...new Set(all.flatMap(({ plan: { stock } }) => stock.map(entry => entry.surface)))]
  const row = (what: string, of: (one: (typeof all)[number]) => string): readonly string[] => [what, ...all.map(of)]
  return table(
    [
      { head: '' },
      { head: 'as planned', align: 'right' },
      ...others.map((_, index) => ({ head: `other ${index + 1}`, align: 'right' as const })),
    ],
    [
      row('operations', ({ figures }) => String(figures.operations)),
      row('set-ups', ({ figures }) => String(figures.loads)),
      row('visits to firms', ({ figures }) => String(figures.visits)),
      row('days outside, one after the other', ({ figures }) => fixed(figures.days, 0)),
      row('a piece in the house, min', ({ figures }) => minutes(figures.each)),
      row('setting up for the batch, min', ({ figures }) => minutes(figures.settingUp)),
      row('pieces to start', one => String(one.plan.batch.start)),
      row('case to order, mm', ({ plan: { case: ordered } }) =>
        ordered ? `${fixed(ordered.ordered.least, 2)} to ${fixed(ordered.ordered.most, 2)}` : 'none',
      ),
      ...surfaces.flatMap(surface => [
        row(`${surface}: stock on diameter, mm`, one => stockOf(one.plan, surface)),
        row(`${surface}: to spare a side, mm`, one => spareOf(one.plan, surface)),
      ]),
      row('errors', ({ figures }) => String(figures.errors.length)),
    ],
  )
}

const entriesOf = ({ stock }: Plan, surface: string) => stock.filter(entry => entry.surface === surface)

/** Of several finishes of one surface all of them, in order. */
const stockOf = (plan: Plan, surface: string): string =>
  entriesOf(plan, surface)
    .map(({ onDiameter }) => fixed(onDiameter.nominal, 3))
    .join(' + ') || 'none'

const spareOf = (plan: Plan, surface: string): string => {
  const spares = entriesOf(plan, surface).flatMap(({ margin }) => [
    margin.cleanUp,
    margin.case ?? margin.plating ?? Number.POSITIVE_INFINITY,
  ])
  return spares.length === 0 ? '' : fixed(Math.min(...spares), 3)
}

/** What is done differently, and what is wrong with it. */
function told(plan: Plan, { plan: other, givesUp, figures }: OtherRoute, number: number): string {
  const names = (operations: Plan['operations']) => operations.map(({ purpose }) => purpose)
  const [was, is] = [names(plan.operations), names(other.operations)]
  const those = ({ operations }: Plan, wanted: readonly string[]) =>
    operations.filter(({ purpose }) => wanted.includes(purpose))
  const gone = was.filter(purpose => !is.includes(purpose))
  const come = is.filter(purpose => !was.includes(purpose))
  const order = other.operations.map(({ number: at, name }) => `${at} ${name}`).join(', ')
  return [
    `Other ${number}: ${givesUp === undefined ? 'every rule is kept' : `gives up ${givesUp}`}`,
    ...those(plan, gone).map(({ name, because }) => `    without ${name}: ${reasonsOf(because).join('; ')}`),
    ...those(other, come).map(({ name }) => `    with ${name}`),
    `    ${order}`,
    ...figures.errors.map(({ message }) => `    error: ${message}`),
    ...(givesUp === undefined
      ? []
      : [`    to plan so: waive: [{rule: ${givesUp}, because: …}] in the part file, with the reason that is printed`]),
    '',
  ].join('\n')
}

/** Why it is done at all, without the rules that hold its place. */
const reasonsOf = (because: readonly string[]): readonly string[] =>
  because.filter(line => !/^(after|before) /.test(line))
