// npm run attacks -- --size NAME: load and faults, and a table of what they came to; without words all of it, which takes hours.
import { clocksBack } from './clock-back.ts'
import { costs } from './cost.ts'
import { fullDisks, readOnlyFile } from './disk.ts'
import { farRaid } from './far-raid.ts'
import { hostileInteractions } from './interactions.ts'
import { kills } from './kills.ts'
import { memoryOver } from './memory.ts'
import { raid } from './raid.ts'
import { databaseRestarts, postgresMissing } from './restarts.ts'
import { printResults, type Result, tableOf } from './result.ts'
import { readSize, sizeNames } from './sizes.ts'

const read = readSize(process.argv.length > 2 ? process.argv.slice(2) : ['--size', 'full'])
if (!read) {
  console.error(`Say how much is to be run: --size ${sizeNames.join(' or --size ')}.`)
  process.exit(2)
}
const { name, size } = read
const onPostgres: readonly (() => Promise<Result>)[] = [
  () => kills(size.kills, 'PostgreSQL'),
  () => databaseRestarts(size.restarts),
  () => farRaid(size.raid, size.processes, size.servers, size.quietS),
  () => memoryOver(size.memory),
  () => costs(size.checks),
]
const attacks: readonly (() => Promise<Result>)[] = [
  () => hostileInteractions(size.hostile),
  () => kills(size.kills, 'SQLite'),
  () => fullDisks(size.disks),
  () => readOnlyFile(),
  () => clocksBack(size.clocks),
  () => raid(size.raid),
  ...(postgresMissing ? [] : onPostgres),
]
if (postgresMissing) console.log(`  ${onPostgres.length} lines are left out: ${postgresMissing}`)
const results: Result[] = []
for (const attack of attacks) {
  const result = await attack()
  results.push(result)
  printResults([result])
}
console.log(`\n${tableOf(results, name, new Date())}`)
process.exitCode = results.every(one => one.wrong.length === 0) ? 0 : 1
