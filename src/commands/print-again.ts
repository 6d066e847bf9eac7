import { join } from 'node:path'
import type { PacketOptions } from '../sheets/packet.ts'
import { sheetNames, sheetsAgain } from '../sheets/sheets-again.ts'
import { inFileName } from './file-name.ts'
import { folderOf, issuedPlan } from './issue.ts'
import { load } from './load.ts'
import type { Options } from './options.ts'
import { PROGRAM, VERSION } from './version.ts'
import { UsageProblem, type World } from './world.ts'

/** Prints single sheets of the plan as it was issued, marked as copies. Nothing is planned anew. */
export async function printAgain(
  file: string,
  names: readonly string[],
  { options, paper, world }: { readonly options: Options; readonly paper: PacketOptions; readonly world: World },
): Promise<readonly string[]> {
  const { part, request: batch } = load(file, options, world)
  if (!part) throw new UsageProblem(`${file} does not read: check says why`)
  const plan = issuedPlan({ part, batch }, options, world)
  const ours = `${PROGRAM} ${VERSION}`
  if (plan.program !== ours)
    throw new UsageProblem(`issued by ${plan.program}; this is ${ours}, whose sheets are others`)
  const known = sheetNames(plan)
  const unknown = names.find(name => !known.includes(name))
  if (unknown !== undefined) throw new UsageProblem(`there is no sheet "${unknown}": ${known.join(', ')}`)
  const { documents } = await sheetsAgain(plan, names, paper)
  const folder = folderOf(plan, options)
  const files = documents.map(({ name, pdf }) => ({
    path: join(folder, `${inFileName([name, ...names.filter(asked => !saysIt(name, asked)), 'copy'].join('-'))}.pdf`),
    content: pdf,
  }))
  world.write(...files)
  return files.map(({ path }) => path)
}

/** `check-paper` is all of `check-paper`, and `order-1-quillfen-hardening` of `order-1`. */
const saysIt = (document: string, asked: string): boolean => `${document}-`.startsWith(`${asked}-`)
