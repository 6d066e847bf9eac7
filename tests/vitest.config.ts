import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/rendered/**'],
    setupFiles: ['tests/setup.ts'],
    testTimeout: 20_000,
  },
})
