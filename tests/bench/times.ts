import { spawnSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'

/**
 * Processor time of all threads, ms: what else the machine does only delays a work, and hardly adds to this. The least of
 * several is the truest.
 */
const processorTime = ({ user, system }: NodeJS.CpuUsage): number => (user + system) / 1000

const least = (values: readonly number[]): number => Math.min(...values)

/** Commands of Node in turn, so that a drift of the machine meets all. Least processor time of each, ms, from its start to its end. */
export function shellTimes(commands: readonly (readonly string[])[], rounds: number, desk: string): readonly number[] {
  const hook = join(desk, 'hook.cjs')
  writeFileSync(hook, "process.on('exit', () => require('node:fs').writeSync(3, JSON.stringify(process.cpuUsage())))\n")
  const times = commands.map((): number[] => [])
  for (let round = -1; round < rounds; round++) {
    for (const [i, argv] of commands.entries()) {
      const given = ['--require', hook, ...argv]
      const { status, output } = spawnSync(process.execPath, given, { stdio: ['ignore', 'ignore', 'ignore', 'pipe'] })
      if (status !== 0) throw new Error(`${argv.join(' ')} ended with status ${status}`)
      if (round >= 0) times[i]?.push(processorTime(JSON.parse(String(output[3]))))
    }
  }
  return times.map(least)
}

/** Works in turn, warmed up before. Least processor time of each, ms. */
export async function inTurn(works: readonly (() => unknown)[], rounds: number): Promise<readonly number[]> {
  const times = works.map((): number[] => [])
  for (let round = -5; round < rounds; round++) {
    for (const [i, work] of works.entries()) {
      const start = process.cpuUsage()
      await work()
      if (round >= 0) times[i]?.push(processorTime(process.cpuUsage(start)))
    }
  }
  return times.map(least)
}
