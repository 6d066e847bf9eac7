import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'

const results = process.env['LINERWRIGHT_RESULTS']

/** Those that put another module in the place of one of ours: each needs modules of its own. */
const MOCKING = ['tests/sheets/paper-in-plan.test.ts', 'tests/commands/screen-in-plan.test.ts']
const APART = ['tests/rendered/**', 'tests/proof/**', 'tests/long/**']

export default defineConfig({
  test: {
    setupFiles: ['tests/setup.ts'],
    // For a loop without end: a busy machine may take twenty times as long as a quiet one.
    testTimeout: 120_000,
    // All of a small machine: one is kept free otherwise, and half the time is lost.
    maxWorkers: availableParallelism(),
    // What is built is loaded as Node loads it, not transformed again.
    server: { deps: { external: [/\/dist\/[^/]+\.c?js$/] } },
    // A reviewed file is written when somebody asks for it, never because it was missing.
    update: 'none',
    reporters: results ? ['default', ['json', { outputFile: results }]] : ['default'],
    projects: [
      // Files that follow each other on a worker share its modules: half the time went into loading them for each file anew.
      {
        extends: true,
        test: { name: 'shared', isolate: false, include: ['tests/**/*.test.ts'], exclude: [...APART, ...MOCKING] },
      },
      { extends: true, test: { name: 'mocking', include: MOCKING } },
    ],
  },
})
