import { oneLine, Refusal } from '../refusal.ts'
import { PROGRAM, VERSION } from './version.ts'
import { STATUS, type World } from './world.ts'

/**
 * The last two of the three faces that the command shows: a refusal is one line; anything else that was thrown is a fault of
 * ours and says so, with what to send. Returns the exit status.
 */
export function complain(error: unknown, world: Pick<World, 'err' | 'runsOn'>, trace: boolean): number {
  if (error instanceof Refusal) {
    world.err(`${PROGRAM}: ${oneLine(error.message)}\n`)
    return STATUS.unusable
  }
  const what = error instanceof Error ? `${error.name}: ${error.message.split('\n', 1)[0]}` : String(error)
  const send = `send this line with the command and its part, shop and batch files to whoever keeps the program`
  const where = trace ? '' : '; --trace shows where'
  world.err(
    `${PROGRAM}: a fault of the program, not of your files: ${oneLine(what)} (${PROGRAM} ${VERSION}, ${world.runsOn}): ${send}${where}\n`,
  )
  if (trace && error instanceof Error) world.err(`${error.stack ?? ''}\n`)
  return STATUS.ourFault
}

/** Asked of the command line as it came, since a fault may come before the options are read. */
export const wantsTrace = (argv: readonly string[]): boolean => argv.includes('--trace')
