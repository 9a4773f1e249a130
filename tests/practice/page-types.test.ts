// The page's scripts, which run in a browser and are left out of the main check, hold to their types as well.
import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'

test('the page type-checks against the DOM', () => {
  const root = fileURLToPath(new URL('../../', import.meta.url))
  const ran = spawnSync('node_modules/.bin/tsc', ['--noEmit', '-p', 'src/practice/page'], {
    cwd: root,
    encoding: 'utf8',
  })
  expect([ran.status, ran.stdout]).toEqual([0, ''])
})
