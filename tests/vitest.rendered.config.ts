import { defineConfig } from 'vitest/config'

const results = process.env['LINERWRIGHT_RESULTS']

/** The tests that need Debian's PDF tools and a browser: poppler-utils, qpdf, chromium. */
export default defineConfig({
  test: {
    include: ['tests/rendered/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    testTimeout: 60_000,
    reporters: results ? ['default', ['json', { outputFile: results }]] : ['default'],
  },
})
