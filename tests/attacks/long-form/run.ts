// npm run attacks: the long form of the attacks, and a table. With a number behind `--` only that part of it: 0.01 is a hundredth.
import { hostileInteractions } from './interactions.ts'
import { kills } from './kills.ts'
import { raid } from './raid.ts'
import { databaseRestarts } from './restarts.ts'
import { printResults, type Result } from './result.ts'

const part = Number(process.argv[2] ?? 1)
if (!(part > 0 && part <= 1)) {
  console.error(`“${process.argv[2]}” is no part of the whole. Write a number over 0, up to 1.`)
  process.exit(2)
}
const of = (whole: number) => Math.max(1, Math.round(whole * part))

const attacks: readonly (() => Promise<Result>)[] = [
  () => hostileInteractions(of(100_000)),
  () => kills(of(500)),
  () => databaseRestarts(of(100)),
  // However little of the rest is run, a raid is a crowd.
  () => raid(Math.max(200, of(2000))),
]
const results: Result[] = []
for (const attack of attacks) {
  const result = await attack()
  results.push(result)
  printResults([result])
}
console.log(`\nAttacks, ${part === 1 ? 'the long form' : `${part} of it`}`)
process.exitCode = printResults(results) ? 0 : 1
