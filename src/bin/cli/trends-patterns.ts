// cellwary trends patterns FILE: the search for rising patterns on a table someone brings.
import { Command } from 'commander'
import { z } from 'zod'
import { mineTable } from '../../trends/patterns/mine-table.ts'
import type { Mined, MiningOptions } from '../../trends/patterns/rising-patterns.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { fail } from './fail.ts'
import { readJson } from './read-json.ts'

const tableShape = z.strictObject({
  rows: z.array(z.strictObject({ items: z.array(z.string()), recent: z.boolean() })),
  largest: z.number().optional(),
  leastSupport: z.number().optional(),
  level: z.number().optional(),
})

export function patternsCommand(): Command {
  return new Command('patterns')
    .description('Find what rises together: {"rows": [{"items": ["a", "b"], "recent": true}, ...]} in JSON.')
    .argument('<file>', 'the table, or -')
    .option('--json', 'print one JSON object: every closed pattern with its counts, p and whether it is significant')
    .action(async (file: string, options: { json?: true }) => {
      const say = sayIn('en')
      const read = await readJson(file, tableShape, say)
      if (!read.ok) return fail(read.sentences)
      const { rows, ...given } = read.value
      const result = mineTable(rows, given as MiningOptions)
      if (!result.ok) return fail([say(`trend-input.${result.refusal.code}`, { ...result.refusal })])
      console.log(options.json ? JSON.stringify(result.mined, null, 2) : wordsOf(say, result.mined))
    })
}

function wordsOf(say: Say, { patterns, recentAll, earlierAll, factor }: Mined): string {
  const significant = patterns.filter(one => one.significant)
  const lines = significant.map(({ generators, recent, earlier, p }) =>
    say('patterns.line', {
      items: (generators[0] ?? []).join(' + '),
      recent,
      recentAll,
      earlier,
      earlierAll,
      p: p.toPrecision(3),
    }),
  )
  return [...lines, say('patterns.count', { count: significant.length, all: patterns.length, factor })].join('\n')
}
