// How the tests run: one pool of processes, no network but loopback (tests/setup.ts), files found by name.
import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    pool: 'forks',
    // As many workers as there are cores: what waits in one test leaves its core to the other.
    maxWorkers: '100%',
    testTimeout: 120_000,
    hookTimeout: 120_000,
    // On a machine that does other work a real browser or process may be late once; what is wrong is wrong twice.
    retry: process.env['CI'] ? 1 : 0,
    passWithNoTests: false,
    // Measured by `npm run check` (--coverage): what the tests reach of the rooms that only think, and may not fall.
    coverage: {
      provider: 'v8',
      include: ['ground', 'engine', 'check', 'readings', 'trends', 'server', 'families', 'answers', 'custom-ids'].map(
        room => `src/${room}/**/*.ts`,
      ),
      reporter: ['text-summary'],
      reportsDirectory: 'node_modules/.coverage',
      thresholds: { lines: 90, branches: 85 },
    },
  },
})
