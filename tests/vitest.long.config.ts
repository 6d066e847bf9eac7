import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'

const results = process.env['LINERWRIGHT_RESULTS']

/** Many runs of what `npm test` runs a few of: damaged files, plausible parts, ends of ranges, killed commands. */
export default defineConfig({
  test: {
    include: ['tests/long/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    testTimeout: 60_000,
    maxWorkers: availableParallelism(),
    reporters: results ? ['default', ['json', { outputFile: results }]] : ['default'],
  },
})
