import { run } from '../../../src/commands/program.ts'
import type { NcProgram } from '../../../src/nc/nc-programs.ts'
import type { Plan } from '../../../src/plan/plan.ts'
import { demo, desk } from '../../commands/fake-world.ts'

export type Programmed = { readonly plan: Plan; readonly programs: readonly NcProgram[] }

export const SHOP: string = demo('shop.yaml')

/** The programs that the command writes for a part and the plan that it prints; nothing where the plan has errors. */
export async function programsOf(part: string, shop: string = SHOP): Promise<Programmed | undefined> {
  const files = { 'part.yaml': part, 'shop.yaml': shop }
  const written = desk(files)
  const status = await run(['ports', 'part.yaml', '--nc', 'nc'], written)
  if (status === 1) return undefined
  if (status !== 0) throw new Error(written.complained())
  const printed = desk(files)
  await run(['plan', 'part.yaml', '--json'], printed)
  const programs = [...written.files].flatMap(([path, content]) =>
    path.endsWith('.nc') ? [{ name: path.replace('nc/', ''), text: String(content) }] : [],
  )
  return { plan: JSON.parse(printed.printed()) as Plan, programs }
}
