import type { World } from './world.ts'

/** Work this short needs no bar. */
const FEW = 3

/** Does the same for every file in turn; a progress bar shows on a terminal when there are many. */
export async function overEach<T>(
  files: readonly string[],
  world: World,
  work: (file: string) => T | Promise<T>,
): Promise<readonly T[]> {
  const results: T[] = []
  const bar = world.terminal.err && files.length > FEW ? await openBar(files.length) : undefined
  try {
    for (const file of files) {
      results.push(await work(file))
      bar?.increment(1, { file })
    }
  } finally {
    bar?.stop()
  }
  return results
}

async function openBar(total: number): Promise<{ increment: (by: number, payload: object) => void; stop: () => void }> {
  const { SingleBar, Presets } = await import('cli-progress')
  const bar = new SingleBar({ format: '{bar} {value}/{total}  {file}', clearOnComplete: true }, Presets.legacy)
  bar.start(total, 0, { file: '' })
  return bar
}
