// What a mutation run runs: the tests of the room that is broken (CELLWARY_MUTATED), without those that take minutes or measure the process.
import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: [`tests/${process.env['CELLWARY_MUTATED']}/**/*.test.ts`],
    exclude: ['tests/trends/audit/**', ...(process.env['CELLWARY_MUTATED_WITHOUT'] ?? '').split(',')],
    setupFiles: ['tests/setup.ts'],
    pool: 'forks',
    testTimeout: 300_000,
    hookTimeout: 300_000,
  },
})
