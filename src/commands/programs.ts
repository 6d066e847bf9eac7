import { join } from 'node:path'
import { fixed } from '../figures.ts'
import type { Plan } from '../plan/plan.ts'
import { inFileName } from './file-name.ts'
import type { Options } from './options.ts'
import { table } from './table.ts'
import { type FileToWrite, UsageProblem, type World } from './world.ts'

/**
 * The programs of a plan and the list of what belongs together. One of another fingerprint is not written over without
 * `--force`; one of this part that the plan no longer has is named.
 */
export async function programFiles(
  plan: Plan,
  folder: string,
  { force }: Pick<Options, 'force'>,
  world: World,
): Promise<readonly FileToWrite[]> {
  const { ncPrograms } = await import('../nc/nc-programs.ts')
  const programs = ncPrograms(plan).map(({ name, text }) => ({ name: inFileName(name), content: text }))
  const own = new Set(programs.map(({ name }) => name))
  const stem = [plan.part.number, plan.part.revision].map(inFileName).join('-')
  const there = (world.exists(folder) ? world.list(folder) : [])
    .filter(name => name.startsWith(`${stem}-`) && name.endsWith('.nc'))
    .map(name => ({ name, found: fingerprintIn(world.readText(join(folder, name))) }))
    .filter(({ found }) => found !== plan.fingerprint)
  const over = there.filter(({ name }) => own.has(name))
  if (over.length > 0 && !force) {
    throw new UsageProblem(
      `${join(folder, over[0]?.name ?? '')} is there with fingerprint ${over[0]?.found ?? 'unknown'}, not ${plan.fingerprint}, and ${over.length - 1} more: the part, the shop, the batch or the program is another; --force writes over them`,
    )
  }
  for (const { name, found } of there.filter(({ name }) => !own.has(name))) {
    world.err(`${join(folder, name)}: stale, of fingerprint ${found ?? 'unknown'}: it does not belong to this plan\n`)
  }
  if (programs.length === 0) return []
  return [
    ...programs.map(({ name, content }) => ({ path: join(folder, name), content })),
    { path: join(folder, `${stem}-programs.txt`), content: listOf(plan) },
  ]
}

const fingerprintIn = (text: string): string | undefined => /^\(fingerprint: (\w+)\)$/m.exec(text)?.[1]

/** In the order of cutting: what is run, with what in the spindle. */
const listOf = ({ part, fingerprint, setUps }: Plan): string =>
  `${part.number} ${part.revision}, fingerprint ${fingerprint}: these programs belong together, in this order\n\n${table(
    [
      { head: 'no.', align: 'right' },
      { head: 'tilt °', align: 'right' },
      { head: 'work' },
      { head: 'T', align: 'right' },
      { head: 'tool' },
      { head: 'stick-out', align: 'right' },
      { head: 'windows' },
      { head: 'program' },
    ],
    setUps.map(({ number, tilt, work, pocket, tool, stickOut, order, program }) => [
      String(number),
      fixed(tilt, 3),
      work,
      pocket === undefined ? '' : String(pocket),
      tool,
      stickOut === undefined ? '' : fixed(stickOut, 1),
      order.join('; '),
      inFileName(program),
    ]),
  )}`
