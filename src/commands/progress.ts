import { complain } from './outer-shell.ts'
import { STATUS, type World } from './world.ts'

/** Work this short needs no bar. */
const FEW = 3
const BAR_WIDTH = 20

export type Over<T> = {
  readonly files: readonly string[]
  readonly world: World
  /** A fault of ours on one of the files shows where. */
  readonly trace: boolean
  /** The world that is handed in knows of the bar: what is written goes above it. */
  readonly work: (file: string, world: World) => T | Promise<T>
}

/** Results in the order of the files, without those on which the work ended; and the worst status that one of these ended with. */
export type Done<T> = { readonly results: readonly T[]; readonly failed: readonly string[]; readonly status: number }

/**
 * Does the same for every file in turn. One that is refused is reported and the next is done. A progress bar shows on a
 * terminal when there are many.
 */
export async function overEach<T>({ files, world, trace, work }: Over<T>): Promise<Done<T>> {
  const results: T[] = []
  const failed: string[] = []
  let status: number = STATUS.fine
  const bar = world.terminal.err && files.length > FEW ? barOn(world, files.length) : undefined
  const beside = bar ? { ...world, err: bar.above } : world
  for (const [index, file] of files.entries()) {
    bar?.show(index, file)
    await world.pause()
    try {
      results.push(await work(file, beside))
    } catch (error) {
      failed.push(file)
      status = Math.max(status, complain(error, beside, trace))
    }
  }
  bar?.clear()
  return { results, failed, status }
}

type Bar = {
  readonly show: (done: number, file: string) => void
  readonly above: (text: string) => void
  readonly clear: () => void
}

/** One line that is written over itself: return to its start, erase to its end (ECMA-48, CR and EL). */
function barOn(world: World, total: number): Bar {
  const columns = world.terminal.columns ?? 80
  let line = ''
  const clear = () => world.err('\r\u001b[K')
  return {
    clear,
    show: (done, file) => {
      const full = Math.round((BAR_WIDTH * done) / total)
      const letters = [...`${'█'.repeat(full)}${'░'.repeat(BAR_WIDTH - full)} ${done + 1} of ${total}  ${file}`]
      line = letters.slice(0, columns - 1).join('')
      world.err(`\r\u001b[K${line}`)
    },
    above: text => {
      clear()
      world.err(text)
      world.err(line)
    },
  }
}
