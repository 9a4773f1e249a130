// cellwary rules list: the questions and options that rules can read, with what each takes, for whoever writes a pack.
import { Command } from 'commander'
import { questionsOf } from '../../engine/conditions.ts'
import { installedPacks } from '../../packs/installed-packs.ts'

type Listed = {
  readonly id: string
  readonly ask: string
  readonly care: string
  readonly options?: readonly { readonly id: string; readonly label: string }[]
  readonly reading?: string
  /** How many rules read it, and whether a hazard does. */
  readonly rules: number
  readonly hazard: boolean
}

export function listCommand(): Command {
  return new Command('list')
    .description('List the questions and options that rules can read.')
    .argument('[word]', 'only questions whose id or text holds this')
    .option('--json', 'as JSON')
    .action(async (word: string | undefined, { json }: { json?: boolean }) => {
      const { packs } = await installedPacks(undefined)
      const rules = packs.flatMap(pack => pack.rules)
      const listed = packs
        .flatMap(pack => pack.questions)
        .map(({ id, ask, care, answer }): Listed => {
          const reading = rules.filter(rule => questionsOf(rule.when).includes(id))
          return {
            id,
            ask,
            care,
            ...(answer.kind === 'options'
              ? { options: answer.options.map(option => ({ id: option.id, label: option.label })) }
              : { reading: `${answer.quantity} in ${answer.unit}, ${answer.least} to ${answer.most}` }),
            rules: reading.length,
            hazard: reading.some(rule => rule.kind === 'hazard'),
          }
        })
        .filter(one => word === undefined || `${one.id} ${one.ask}`.toLowerCase().includes(word.toLowerCase()))
      if (json) return console.log(JSON.stringify(listed, null, 2))
      for (const { id, ask, care, options, reading, rules: count, hazard } of listed) {
        console.log(`${id} (${care}; ${count} rules${hazard ? ', a hazard among them' : ''}): ${ask}`)
        for (const option of options ?? []) console.log(`  ${option.id}: ${option.label}`)
        if (reading) console.log(`  ${reading}`)
      }
      if (listed.length === 0) {
        console.error(`no question holds “${word}”. Leave the word out to see all.`)
        process.exitCode = 1
      }
      return undefined
    })
}
