// npm run attacks -- --size NAME: load and faults, and a table of what they came to; without words all of it, which takes hours.
import { attacks, leftOut } from './attacks.ts'
import { addPart, readParts, together } from './parts.ts'
import { printResults, tableOf } from './result.ts'
import { readWords, sizeNames } from './sizes.ts'

const names = attacks.map(one => one.name)
const read = readWords(process.argv.slice(2), names)
if (!read) {
  console.error(
    `Say how much is to be run: --size ${sizeNames.join(' or --size ')}; --only NAME (${names.join(', ')}); --part 2/10 for a tenth of it, --into FILE where parts are kept.`,
  )
  process.exit(2)
}
const { name, size, only, part, into } = read
if (leftOut) console.log(`  ${leftOut}`)
const before = into === undefined ? [] : await readParts(into)
const parts = [...before]
for (const attack of attacks) {
  if (only !== undefined && attack.name !== only) continue
  const all = attack.times?.(size)
  // What cannot be done in parts is done in the first.
  if (all === undefined && part.number > 1) continue
  const times = Math.ceil((all ?? 1) / part.of)
  const result = await attack.run(size, times, part.number)
  const done = { attack: attack.name, size: name, result }
  parts.push(done)
  if (into !== undefined) await addPart(into, done)
  printResults([result])
}
const results = together(parts, names)
console.log(`\n${tableOf(results, name, new Date())}`)
process.exitCode = results.every(one => one.wrong.length === 0) ? 0 : 1
