import { join } from 'node:path'
import type { Plan } from '../plan/plan.ts'
import type { PacketOptions } from '../sheets/packet.ts'
import type { Printed } from '../sheets/print-document.ts'
import { inFileName } from './file-name.ts'
import type { Options } from './options.ts'
import { paperFiles } from './paper-files.ts'
import { UsageProblem, type World } from './world.ts'

/** Templates, typeface and the wishes of the command line, ready for the sheets. */
export function paperOptions(options: Options, world: World): PacketOptions {
  const { format, paper, units, templates } = options
  return {
    ...paperFiles(world, templates),
    formats: { pdf: format !== 'html', html: format !== 'pdf' },
    paper,
    units,
  }
}

/** `OX-098-21-B-batch-2631`, and what else the document is; letters that a file name cannot have become dashes. */
export const fileStem = ({ part, batch }: Plan, ...more: readonly string[]): string =>
  [part.number, part.revision, 'batch', batch.number, ...more].map(inFileName).join('-')

/** Writes the files of a document. One that was made from something else is not written over without `--force`. */
export function writeDocument({
  stem,
  printed: { pdf, html },
  plan,
  options,
  world,
}: {
  readonly stem: string
  readonly printed: Printed
  readonly plan: Plan
  readonly options: Options
  readonly world: World
}): readonly string[] {
  const files = [
    ...(pdf ? [{ path: join(options.out, `${stem}.pdf`), content: pdf }] : []),
    ...(html === undefined ? [] : [{ path: join(options.out, `${stem}.html`), content: html }]),
  ]
  for (const { path } of files) {
    const found = world.exists(path) ? fingerprintIn(world.readBytes(path)) : plan.fingerprint
    if (found !== plan.fingerprint && !options.force) {
      throw new UsageProblem(
        `${path} is there with fingerprint ${found ?? 'unknown'}, not ${plan.fingerprint}: the part, the shop, the batch, its quantity or date or the program is another; --force writes over it`,
      )
    }
  }
  world.write(...files)
  return files.map(({ path }) => path)
}

/** PDF and HTML both carry the fingerprint in plain bytes near their ends. */
function fingerprintIn(bytes: Uint8Array): string | undefined {
  return /fingerprint(?: |" content=")([0-9a-f]{12})/.exec(new TextDecoder('latin1').decode(bytes))?.[1]
}
