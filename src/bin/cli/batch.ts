// cellwary batch "45.1, 45.3, 45.2 g": whether cells bought together can be one lot, by mass or capacity, for people or as JSON.
import { Command, Option } from 'commander'
import type { BatchQuantity } from '../../readings/batch/lot-spread.ts'
import { readBatch } from '../../readings/batch/read-batch.ts'
import { weighBatch } from '../../readings/batch/weigh-batch.ts'
import { sayBatch, sayBatchRefusal } from '../../words/batch-words.ts'
import { unmarked } from '../../words/plain.ts'
import { sayIn } from '../../words/say.ts'
import { localesOf } from './locales-of.ts'

type Options = { readonly quantity: BatchQuantity; readonly json?: true; readonly locale: string }

export function batchCommand(): Command {
  const quantity = new Option('--quantity <quantity>', 'what the figures are').choices(['mass', 'capacity'])
  return new Command('batch')
    .description('Say whether cells bought together can be one lot, by their masses (or capacities, if all are new).')
    .argument('<figures>', 'one figure for each cell, such as "45.1, 45.3, 45.2 g"')
    .addOption(quantity.default('mass'))
    .option('--json', 'print one JSON object')
    .option('--locale <locale>', 'whose numbers these are, such as de (comma for decimals)', 'en')
    .action(batch)
}

function batch(figures: string, { quantity, json, locale }: Options): void {
  const say = sayIn('en')
  const [numbers] = localesOf(locale)
  if (numbers === undefined) {
    fail(`--locale: “${locale}” is not a language that is known here. Write one such as en, de or es-ES.`, 2)
    return
  }
  const read = readBatch(figures, quantity, numbers)
  if (!read.ok) {
    fail(sayBatchRefusal(say, read.refusal), 1)
    return
  }
  const { values, resolution } = read
  const finding = weighBatch({ quantity, values, resolution })
  if (!finding) return
  const sentences = sayBatch(say, finding, values)
  const caution = say('caution.full')
  const title = say('batch.title', { count: values.length, quantity })
  const report = { ...finding, values, resolution, sentences, caution }
  console.log(json ? JSON.stringify(report, null, 2) : unmarked([title, '', ...sentences, '', caution].join('\n')))
}

function fail(sentence: string, code: number): void {
  console.error(unmarked(sentence))
  process.exitCode = code
}
