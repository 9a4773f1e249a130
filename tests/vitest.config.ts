// How the tests run: one pool of processes, no network but loopback (tests/setup.ts), files found by name.
import { defineConfig } from 'vitest/config'

/** Rooms whose tests only think: one process reads their modules once for all files. Every other file has a process of its own. */
const thinking = [
  'answers',
  'check',
  'custom-ids',
  'discord',
  'engine',
  'families',
  'packs',
  'pictures',
  'readings',
  'rules',
  'server',
  'services',
  'trends',
  'words',
].map(room => `tests/${room}/**/*.test.ts`)

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    setupFiles: ['tests/setup.ts'],
    pool: 'forks',
    // Node 24.21 itself now and then ends a process while it frees compiled WebAssembly (V8, `jit_page.has_value()`; kin of nodejs/node 64500): a
    // test's process is short, and need not free any.
    execArgv: ['--no-wasm-code-gc', '--no-wasm-tier-up'],
    // As many workers as there are cores: what waits in one test leaves its core to the other.
    maxWorkers: '100%',
    testTimeout: 120_000,
    hookTimeout: 120_000,
    // What is waited for comes; how soon is not what a test asks.
    expect: { poll: { timeout: 60_000 } },
    // On a machine that does other work a real browser or process may be late once; what is wrong is wrong twice.
    retry: process.env['CI'] ? 1 : 0,
    passWithNoTests: false,
    projects: [
      { extends: true, test: { name: 'thinking', include: thinking, isolate: false } },
      { extends: true, test: { name: 'whole', include: ['tests/**/*.test.ts'], exclude: thinking } },
    ],
    // Measured by `npm run check` (--coverage): what the tests reach of the rooms that only think, and may not fall.
    coverage: {
      provider: 'v8',
      include: ['ground', 'engine', 'check', 'readings', 'trends', 'server', 'families', 'answers', 'custom-ids'].map(
        room => `src/${room}/**/*.ts`,
      ),
      reporter: ['text-summary'],
      reportsDirectory: 'node_modules/.coverage',
      thresholds: { lines: 97, branches: 92 },
    },
  },
})
