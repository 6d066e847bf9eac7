import { join } from 'node:path'
import type { Units } from '../figures.ts'
import { hasErrors } from '../finding.ts'
import type { Plan } from '../plan/plan.ts'
import { inFileName } from './file-name.ts'
import { jsonText } from './json.ts'
import type { Options } from './options.ts'
import { planFile } from './plan-file.ts'
import { ports } from './ports.ts'
import { portsWhatIf } from './ports-what-if.ts'
import { programFiles } from './programs.ts'
import { reportBeside } from './report.ts'
import { show } from './show.ts'
import { type FileToWrite, STATUS, type World } from './world.ts'

/** The ports on the terminal, or what they would be with something changed; with `--nc` and `--svg` as programs and drawings in files instead. */
export async function portsCommand(file: string, options: Options, world: World): Promise<number> {
  const whatIf = await portsWhatIf(file, options, world)
  if (whatIf !== undefined) return whatIf
  if (options.nc === undefined && options.svg === undefined) return show(file, options, world, ports)
  const { plan, findings } = planFile(file, options, world)
  reportBeside(findings, world)
  if (!plan || hasErrors(findings)) {
    world.err(`${file}: no files: the plan has errors\n`)
    if (options.json) world.out(jsonText({ file, written: [] }))
    return STATUS.errors
  }
  const files = [
    ...(options.nc === undefined ? [] : await programFiles(plan, options.nc, options, world)),
    ...(options.svg === undefined ? [] : await drawings(plan, options.svg, options.units, world)),
  ]
  world.write(...files)
  const written = files.map(({ path }) => path)
  world.out(options.json ? jsonText({ file, written }) : written.map(path => `${path}\n`).join(''))
  return STATUS.fine
}

const OF_PORTS: ReadonlySet<string> = new Set([
  'plan-view',
  'map',
  'map-true-size',
  'map-outside-true-size',
  'edges',
  'timing',
  'areas',
])

async function drawings(plan: Plan, folder: string, units: Units, world: World): Promise<readonly FileToWrite[]> {
  const [{ drawPictures }, { pictureSvg }, { typefaceOf }] = await Promise.all([
    import('../pictures/draw-pictures.ts'),
    import('../pictures/picture-svg.ts'),
    import('./paper-files.ts'),
  ])
  const pictures = [...drawPictures(plan, typefaceOf(world).measure, units)]
  return pictures
    .filter(([name]) => OF_PORTS.has(name) || name.startsWith('fixture'))
    .map(([name, picture]) => ({
      path: join(folder, `${inFileName(plan.part.number)}-${inFileName(plan.part.revision)}-${name}.svg`),
      content: pictureSvg(picture, { trueSize: name.endsWith('true-size') }),
    }))
}
