import { join } from 'node:path'
import type { Plan } from '../plan/plan.ts'
import type { Printed } from '../sheets/print-document.ts'
import { inFileName } from './file-name.ts'
import type { Options } from './options.ts'
import { UsageProblem, type World } from './world.ts'

/** What paper is issued for: one folder each. */
type Issued = {
  readonly part: Pick<Plan['part'], 'number' | 'revision'>
  readonly batch: Pick<Plan['batch'], 'number'>
}

/** `out/OX-098-21-B-2631`; letters that a file name cannot have become dashes. */
export const folderOf = ({ part, batch }: Issued, { out }: Pick<Options, 'out'>): string =>
  join(out, [part.number, part.revision, batch.number].map(inFileName).join('-'))

const PLAN = 'plan.json'

/**
 * The plan under which its paper is to be issued. What has been issued is kept: another plan for the same part and batch is
 * refused, or with `--force` says on every sheet what it replaces.
 */
export function planToIssue(plan: Plan, options: Options, world: World): Plan {
  const path = join(folderOf(plan, options), PLAN)
  const before = world.exists(path) ? issuedIn(path, world) : undefined
  // The same paper once more, and what it said of an earlier one.
  if (!before || before.fingerprint === plan.fingerprint)
    return before?.replaces ? { ...plan, replaces: before.replaces } : plan
  if (options.force) return { ...plan, replaces: { fingerprint: before.fingerprint, date: before.date } }
  throw new UsageProblem(
    `${path} is issued with fingerprint ${before.fingerprint}, not ${plan.fingerprint}: the part, the shop, the batch, its quantity or date or the program is another; --force replaces it and says so on every sheet`,
  )
}

/** Writes the paper of a plan, and the plan beside it. What is left there of a plan that it replaces goes. */
export function writeIssued({
  plan,
  printed: { documents, html },
  screen = 'packet',
  options,
  world,
}: {
  readonly plan: Plan
  readonly printed: Printed
  /** Name of what is for a screen, without its ending. */
  readonly screen?: string
  readonly options: Options
  readonly world: World
}): readonly string[] {
  const folder = folderOf(plan, options)
  const path = join(folder, PLAN)
  const isReplaced = world.exists(path) && issuedIn(path, world).fingerprint !== plan.fingerprint
  const files = [
    ...documents.map(({ name, pdf }) => ({ path: join(folder, `${inFileName(name)}.pdf`), content: pdf })),
    ...(html === undefined ? [] : [{ path: join(folder, `${inFileName(screen)}.html`), content: html }]),
    // All digits: a sheet printed from it again rounds as the first one did.
    { path, content: `${JSON.stringify(plan, null, 2)}\n` },
  ]
  const written = files.map(file => file.path)
  const stale = isReplaced ? world.list(folder).map(name => join(folder, name)) : []
  world.write(...files)
  world.remove(...stale.filter(name => OURS.test(name) && !written.includes(name)))
  return written
}

const OURS = /[\\/](?:floor|inspection|order-\d+-[^\\/]*|labels|[^\\/]*-copy|packet)\.(?:pdf|html)$/

/** The plan as issued in that folder, to print sheets of it again. */
export function issuedPlan(of: Issued, options: Options, world: World): Plan {
  const path = join(folderOf(of, options), PLAN)
  if (!world.exists(path))
    throw new UsageProblem(
      `${path} is not there: nothing is issued of this part, revision and batch; --batch says which, and traveller issues it`,
    )
  return issuedIn(path, world)
}

/** The plan in a file, or in the folder that it was issued into. */
export function planAt(path: string, world: World): Plan {
  const within = join(path, PLAN)
  return issuedIn(world.exists(within) ? within : path, world)
}

function issuedIn(path: string, world: World): Plan {
  const refuse = (why: string): never => {
    throw new UsageProblem(`${path} is no plan as issued: ${why}`)
  }
  let read: unknown
  try {
    read = JSON.parse(world.readText(path))
  } catch (error) {
    if (error instanceof SyntaxError) return refuse('it is not JSON')
    throw error
  }
  const has = (key: string): boolean => typeof read === 'object' && read !== null && Object.hasOwn(read, key)
  const missing = ['part', 'batch', 'operations', 'fingerprint', 'date', 'program'].find(key => !has(key))
  if (missing !== undefined) return refuse(`it has no ${missing}`)
  // Written by this program, whose `program` is compared where anything is printed from it.
  return read as Plan
}
