import type { Options } from './options.ts'
import { PORTS } from './ports-room.ts'
import { sideBySide } from './side-by-side.ts'
import { UsageProblem, type World } from './world.ts'

/** What the ports would be with something changed; nothing where no such thing is asked. */
export async function portsWhatIf(file: string, options: Options, world: World): Promise<number | undefined> {
  const { sweep, set, solve, measured, nc, svg } = options
  const asked = [sweep, solve, measured].filter(option => option !== undefined)
  if (asked.length + (set ? 1 : 0) > 0 && nc !== undefined)
    throw new UsageProblem('--nc writes what the part file says: leave out --set, --sweep, --solve, --measured')
  if (svg !== undefined && (set || solve !== undefined || measured !== undefined))
    throw new UsageProblem('--svg draws what the part file says, or a sweep: leave out --set, --solve, --measured')
  if (asked.length > 1) throw new UsageProblem('one of --sweep, --solve and --measured at a time')
  if (options.asMade && !set && sweep === undefined)
    throw new UsageProblem('--as-made holds the edges under --set or --sweep: give one of them with it')
  if (sweep !== undefined) return (await import('./sweep-ports.ts')).sweepPorts(file, sweep, options, world)
  if (solve !== undefined) return (await import('./solve-port.ts')).solveCommand(file, solve, options, world)
  if (measured !== undefined) return (await import('./measured-liner.ts')).measuredLiner(file, measured, options, world)
  return set ? sideBySide(file, options, world, { room: PORTS }) : undefined
}
