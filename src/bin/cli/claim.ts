// cellwary claim "TEXT": what a listing or label claims, and which of it is impossible, for people or as JSON.
import { Command } from 'commander'
import { dayOf } from '../../engine/day-of.ts'
import { readClaims } from '../../readings/read-claims.ts'
import { weighClaims } from '../../readings/weigh-claims.ts'
import { sayClaimFinding, sayFact, sayNothingFound } from '../../words/claim-words.ts'
import { unmarked } from '../../words/plain.ts'
import { sayIn } from '../../words/say.ts'
import { localesOf } from './locales-of.ts'

export function claimCommand(): Command {
  return new Command('claim')
    .description('Read what a listing or label claims, such as "18650 9900mAh 30A 38g", and weigh it.')
    .argument('<text>', 'the text of the listing or label')
    .option('--json', 'print one JSON object')
    .option('--locale <locale>', 'whose numbers these are, such as de (comma for decimals)', 'en')
    .action((text: string, { json, locale }: { json?: true; locale: string }) => {
      const say = sayIn('en')
      const [numbers] = localesOf(locale)
      if (numbers === undefined) {
        console.error(`--locale: “${locale}” is not a language that is known here. Write one such as en, de or es-ES.`)
        process.exitCode = 2
        return
      }
      const today = dayOf(Date.now())
      const facts = readClaims(text, numbers)
      const found = weighClaims(facts, today)
      const read = facts.map(fact => ({ ...fact, sentence: sayFact(say, fact, text) }))
      const weighed = found.findings.map(finding => ({ ...finding, sentence: sayClaimFinding(say, finding) }))
      const caution = say('caution.full')
      if (json) {
        const { compared } = found
        return console.log(JSON.stringify({ text, today, facts: read, findings: weighed, compared, caution }, null, 2))
      }
      const lines = weighed.map(({ weight, sentence }) => `${say(`claim.${weight}`)}: ${sentence}`)
      const words = [...read.map(one => one.sentence), '', ...lines, ...sayNothingFound(say, found), '', caution]
      console.log(facts.length === 0 ? say('claim.none') : unmarked(words.join('\n')))
    })
}
