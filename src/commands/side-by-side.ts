import { type Finding, hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { asMade } from '../plan/as-made.ts'
import type { Plan } from '../plan/plan.ts'
import type { Shop } from '../shop/shop.ts'
import { jsonText } from './json.ts'
import { type Loaded, planWith } from './load.ts'
import type { Options } from './options.ts'
import { reportBeside } from './report.ts'
import { heading } from './route.ts'
import type { View } from './view.ts'
import { STATUS, type World } from './world.ts'

/** One room of the plan, as a what-if asks it: planned as far as it needs, shown alone, and shown against another of its kind. */
export type Room<P> = {
  readonly make: (
    part: Part,
    shop: Shop,
    loaded: Loaded,
  ) => { readonly plan?: P; readonly findings: readonly Finding[] }
  readonly view: View<P>
  readonly compared: (before: P, after: P, options: Options, colour: boolean) => string
}

type Shown = Pick<Plan, 'part' | 'batch' | 'findings'> & Partial<Pick<Plan, 'ports'>>

/** The room as the files say and with what `--set` changes, side by side; `also` is said besides, in words and as data. */
export function sideBySide<P extends Shown>(
  file: string,
  options: Options,
  world: World,
  { room, also }: { readonly room: Room<P>; readonly also?: { readonly words: string; readonly data: object } },
): number {
  const { set, ...plain } = options
  const before = planWith(file, plain, world, room.make)
  const was = before.loaded.part
  const held = (part: Part): Part =>
    options.asMade && was && before.plan?.ports ? asMade(part, was, before.plan.ports) : part
  const after = planWith(file, options, world, (part, shop, loaded) => room.make(held(part), shop, loaded))
  if (options.json) {
    const side = (plan: P | undefined, findings: readonly Finding[]) =>
      plan ? room.view.data(plan, options) : { findings }
    const both = { set, before: side(before.plan, before.findings), after: side(after.plan, after.findings) }
    world.out(jsonText({ ...also?.data, ...both }))
  } else if (before.plan && after.plan) {
    const made = options.asMade ? ', edges as cut' : ''
    const words = also === undefined ? '' : `${also.words}\n`
    const compared = room.compared(before.plan, after.plan, options, world.terminal.colour)
    world.out(`${heading(after.plan)}\n${words}Changed: ${set?.join(', ')}${made}\n\n${compared}`)
  }
  reportBeside(after.findings, world)
  return hasErrors(after.findings) ? STATUS.errors : STATUS.fine
}
