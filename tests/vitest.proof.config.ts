import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'

const results = process.env['LINERWRIGHT_RESULTS']

/** The proof of random ported liners on solids: some minutes, so apart from `npm test`. */
export default defineConfig({
  test: {
    include: ['tests/proof/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    testTimeout: 600_000,
    maxWorkers: availableParallelism(),
    reporters: results ? ['default', ['json', { outputFile: results }]] : ['default'],
  },
})
