import { execFileSync } from 'node:child_process'

/** Whatever else the machine does only adds to a time: the least is the truest. */
const least = (values: readonly number[]): number => Math.min(...values)

/** Commands of Node in turn, so that a drift of the machine meets all. Least wall time of each, ms. */
export function shellTimes(commands: readonly (readonly string[])[], rounds: number): readonly number[] {
  const times = commands.map((): number[] => [])
  for (let round = -1; round < rounds; round++) {
    for (const [i, argv] of commands.entries()) {
      const start = process.hrtime.bigint()
      execFileSync(process.execPath, argv, { stdio: ['ignore', 'ignore', 'ignore'] })
      if (round >= 0) times[i]?.push(Number(process.hrtime.bigint() - start) / 1e6)
    }
  }
  return times.map(least)
}

/** Works in turn, warmed up before. Least wall time of each, ms. */
export async function inTurn(works: readonly (() => unknown)[], rounds: number): Promise<readonly number[]> {
  const times = works.map((): number[] => [])
  for (let round = -5; round < rounds; round++) {
    for (const [i, work] of works.entries()) {
      const start = performance.now()
      await work()
      if (round >= 0) times[i]?.push(performance.now() - start)
    }
  }
  return times.map(least)
}
