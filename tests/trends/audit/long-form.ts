// npm run audit-streams: the long form of the audits of what moderators see, 10,000 random streams each; with a number behind `--` so many.
import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'

const streams = Number(process.argv[2] ?? 10_000)
if (!Number.isInteger(streams) || streams < 100) {
  console.error(`“${process.argv[2]}” is no number of streams. Write a whole number, 100 or more.`)
  process.exit(2)
}
const at = (path: string) => fileURLToPath(new URL(path, import.meta.url))
const { status } = spawnSync(
  at('../../../node_modules/.bin/vitest'),
  [
    ...['run', '--config', at('../../vitest.config.ts')],
    ...['findings', 'helpers'].map(name => at(`./${name}-audit.test.ts`)),
  ],
  { stdio: 'inherit', env: { ...process.env, CELLWARY_AUDIT_STREAMS: String(streams) } },
)
process.exitCode = status ?? 1
