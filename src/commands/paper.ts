import type { PacketOptions } from '../sheets/packet.ts'
import type { Options } from './options.ts'
import { paperFiles } from './paper-files.ts'
import type { World } from './world.ts'

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
