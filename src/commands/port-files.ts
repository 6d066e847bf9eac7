import { join } from 'node:path'
import { hasErrors } from '../finding.ts'
import type { Plan } from '../plan/plan.ts'
import type { Shop } from '../shop/shop.ts'
import { planFile } from './load.ts'
import type { Options } from './options.ts'
import { counted, reportBeside } from './report.ts'
import { STATUS, type World } from './world.ts'

type FilesWanted = Options & { readonly nc?: string; readonly svg?: string }
type NewFile = { readonly path: string; readonly content: string }

/** Pictures that go to the milling machine and the fitter's bench; `fixture...` is one a set-up. */
const PICTURES = /^(plan-view|map|map-true-size|map-outside-true-size|edges|timing|fixture.*)$/

/** Writes the programs and pictures of the ports and prints their paths. A plan that cannot work gets neither. */
export async function portFiles(file: string, options: FilesWanted, world: World): Promise<number> {
  const { plan, findings, loaded } = planFile(file, options, world)
  reportBeside(findings, world)
  const works = plan && loaded.shop && !hasErrors(findings)
  if (!works) world.err(`${file}: no programs and no pictures: ${counted(findings)}\n`)
  const files = works ? await filesOf(plan, loaded.shop, options, world) : []
  for (const { path, content } of files) world.write(path, content)
  const written = files.map(({ path }) => path)
  if (options.json) world.out(`${JSON.stringify({ ...(plan && { part: plan.part }), written, findings }, null, 2)}\n`)
  else world.out(written.map(path => `${path}\n`).join(''))
  if (works && files.length === 0) world.err(`${file}: no ports, so nothing to write\n`)
  return works ? STATUS.fine : STATUS.errors
}

async function filesOf(plan: Plan, shop: Shop, options: FilesWanted, world: World): Promise<readonly NewFile[]> {
  return [
    ...(options.nc === undefined ? [] : await programs(plan, shop, options.nc)),
    ...(options.svg === undefined ? [] : await pictures(plan, options.svg, options, world)),
  ]
}

async function programs(plan: Plan, shop: Shop, folder: string): Promise<readonly NewFile[]> {
  const { ncPrograms } = await import('../ports/nc/nc-programs.ts')
  return ncPrograms(plan, shop).map(({ name, text }) => ({ path: join(folder, fileName(name)), content: text }))
}

async function pictures(plan: Plan, folder: string, options: Options, world: World): Promise<readonly NewFile[]> {
  const [{ typefaceOf }, { drawPictures }, { pictureSvg }] = await Promise.all([
    import('./paper.ts'),
    import('../pictures/draw-pictures.ts'),
    import('../pictures/picture-svg.ts'),
  ])
  const { number, revision } = plan.part
  return [...drawPictures(plan, typefaceOf(world).measure)]
    .filter(([name]) => PICTURES.test(name))
    .map(([name, picture]) => ({
      path: join(folder, fileName(`${number}-${revision}-${name}.svg`)),
      content: `${pictureSvg(picture, { trueSize: name.endsWith('true-size') })}\n`,
    }))
}

/** Letters that a file name cannot have become dashes. */
const fileName = (text: string): string => text.replace(/[^\p{L}\p{N}._-]+/gu, '-')
