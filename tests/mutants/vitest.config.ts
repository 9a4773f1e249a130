// What a mutation run runs: the tests of the rooms that only think, without those that take minutes or measure the process.
import { defineConfig } from 'vitest/config'

const rooms = ['engine', 'check', 'families', 'trends', 'server', 'answers', 'rules', 'packs', 'custom-ids', 'discord']

export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: rooms.map(room => `tests/${room}/**/*.test.ts`),
    exclude: ['tests/trends/audit/**'],
    setupFiles: ['tests/setup.ts'],
    pool: 'forks',
    testTimeout: 300_000,
    hookTimeout: 300_000,
  },
})
