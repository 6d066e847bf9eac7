import { describe, expect, it } from 'vitest'
import { killedRuns } from '../campaign/killed-runs.ts'
import { BUILT, ROOT, scratch } from '../commands/built-command.ts'

describe('a command that is killed', () => {
  it('leaves whole files or none, and nothing beside them: ten runs of the campaign', async ({ skip }) => {
    if (process.platform === 'win32') return skip('signals are of POSIX')
    expect(await killedRuns({ main: BUILT, root: ROOT, desk: scratch() }, { seed: 20_261_130, count: 10 })).toEqual([])
  }, 300_000)
})
