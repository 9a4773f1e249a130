// cellwary rules diff: what differs between two packs, rule by rule, so that a change can be read before it is installed.
import { isDeepStrictEqual } from 'node:util'
import { Command } from 'commander'
import type { Pack, Rule } from '../../engine/pack/pack.ts'
import { loadPacks } from '../../packs/load-packs.ts'
import { shippedRules } from '../../packs/shipped-rules.ts'
import { sayProblem } from '../../words/problem-words.ts'
import { sayIn } from '../../words/say.ts'

export function diffCommand(): Command {
  return new Command('diff')
    .description('Say what differs between two packs.')
    .argument('<before>', 'a folder with a pack')
    .argument('<after>', 'the same pack as it is now')
    .option('--json', 'print one JSON object')
    .action(async (before: string, after: string, { json }: { json?: true }) => {
      const [one, other] = await Promise.all([packIn(before), packIn(after)])
      if (!one || !other) {
        process.exitCode = 1
        return
      }
      const lines = differences(one, other)
      if (json) return console.log(JSON.stringify({ differences: lines }, null, 2))
      for (const line of lines) console.log(line)
      if (lines.length === 0) console.log('They judge alike.')
    })
}

async function packIn(folder: string): Promise<Pack | undefined> {
  const base = (await loadPacks(shippedRules, { cases: false })).packs.map(loaded => loaded.pack)
  const alone = await loadPacks(folder, { cases: false, base: base.filter(pack => pack.families.length === 0) })
  for (const { file, problem } of alone.problems) console.error(`${file}: ${sayProblem(sayIn('en'), problem)}`)
  if (alone.packs.length === 0) console.error(`${folder}: no rule pack here. Name a folder that holds a pack.yaml.`)
  return alone.problems.length === 0 ? alone.packs[0]?.pack : undefined
}

function differences(before: Pack, after: Pack): string[] {
  const old = new Map(before.rules.map(rule => [rule.id, rule]))
  const kindOf = (rule: Rule): string => (rule.kind === 'sign' ? `${rule.strength} sign` : rule.kind)
  const lines = after.rules.flatMap(rule => {
    const was = old.get(rule.id)
    old.delete(rule.id)
    if (!was) return [`+ ${rule.id} (${kindOf(rule)}): ${rule.says}`]
    return [
      ...(kindOf(was) === kindOf(rule) ? [] : [`~ ${rule.id}: ${kindOf(rule)} (before: ${kindOf(was)})`]),
      ...(isDeepStrictEqual(was.when, rule.when) ? [] : [`~ ${rule.id}: other answers make it fire`]),
      ...(was.says === rule.says ? [] : [`~ ${rule.id}: other words`]),
    ]
  })
  const gone = [...old.values()].map(rule => `- ${rule.id} (${kindOf(rule)})`)
  const families = after.families.flatMap(family => {
    const was = before.families.find(one => one.id === family.id)
    if (!was) return [`+ family ${family.id}`]
    return isDeepStrictEqual(was.enough, family.enough) ? [] : [`~ family ${family.id}: something else is enough`]
  })
  const lost = before.families
    .filter(one => !after.families.some(family => family.id === one.id))
    .map(one => `- family ${one.id}`)
  return [...lines, ...gone, ...families, ...lost]
}
