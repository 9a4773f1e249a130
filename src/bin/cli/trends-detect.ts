// cellwary trends detect FILE: the watch's own methods on a series someone brings, to be held against any other library.
import { Command } from 'commander'
import { z } from 'zod'
import { type Detected, detect, type Series } from '../../trends/detect.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { fail } from './fail.ts'
import { readJson } from './read-json.ts'

const numbers = z.array(z.number())
const counts = { observed: numbers, checks: numbers.optional() }
const seriesShape = z.discriminatedUnion('method', [
  z.strictObject({
    method: z.literal('lr-cusum'),
    ...counts,
    scatter: z.enum(['poisson', 'negative-binomial']).optional(),
    spread: z.number().optional(),
    kappa: z.number().optional(),
    threshold: z.number().optional(),
    expected: numbers.optional(),
  }),
  z.strictObject({
    method: z.literal('spike'),
    ...counts,
    level: z.number().optional(),
    weeks: z.int().optional(),
    gap: z.int().optional(),
  }),
])

export function detectCommand(): Command {
  return new Command('detect')
    .description('Watch a series: {"method": "lr-cusum" or "spike", "observed": [...], "checks": [...], ...} in JSON.')
    .argument('<file>', 'the series, or -')
    .option('--json', 'print one JSON object: statistic, expected and alarms week by week')
    .action(async (file: string, options: { json?: true }) => {
      const say = sayIn('en')
      const read = await readJson(file, seriesShape, say)
      if (!read.ok) return fail(read.sentences)
      const result = detect(read.value as Series)
      if (!result.ok) return fail([say(`trend-input.${result.refusal.code}`, { ...result.refusal })])
      const { detected } = result
      console.log(
        options.json ? JSON.stringify({ method: read.value.method, ...detected }, null, 2) : wordsOf(say, detected),
      )
    })
}

function wordsOf(say: Say, { alarms, statistic, expected }: Detected): string {
  const figure = (value: number | null | undefined) =>
    value === null || value === undefined ? '-' : value.toFixed(3).padStart(8)
  const lines = statistic.map((value, week) =>
    say('detect.week', {
      week: week + 1,
      statistic: figure(value),
      expected: figure(expected[week]),
      alarm: alarms.includes(week + 1) ? 'yes' : 'no',
    }),
  )
  return [...lines, say('detect.alarms', { count: alarms.length, weeks: alarms.join(', ') })].join('\n')
}
