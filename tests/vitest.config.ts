import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'

const results = process.env['LINERWRIGHT_RESULTS']

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/rendered/**', 'tests/proof/**'],
    setupFiles: ['tests/setup.ts'],
    testTimeout: 20_000,
    // All of a small machine: one is kept free otherwise, and half the time is lost.
    maxWorkers: availableParallelism(),
    // A reviewed file is written when somebody asks for it, never because it was missing.
    update: 'none',
    reporters: results ? ['default', ['json', { outputFile: results }]] : ['default'],
  },
})
