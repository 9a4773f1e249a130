// cellwary policy: the page to link as privacy policy and terms of use, as HTML, in the words that the bot itself says.
import { Command } from 'commander'
import { type Policy, type PolicySection, sayPolicy } from '../../words/policy-words.ts'
import { sayIn } from '../../words/say.ts'
import { fail } from './fail.ts'
import { localesOf } from './locales-of.ts'

type Options = { readonly contact: string; readonly language: string; readonly json?: true }

export function policyCommand(): Command {
  return new Command('policy')
    .description('Print the page to link as privacy policy and terms of service, as HTML.')
    .requiredOption('--contact <text>', 'who runs the bot and how they are reached')
    .option('--language <tag>', 'of its words, such as de', 'en')
    .option('--json', 'print one JSON object instead of the page')
    .action(({ contact, language, json }: Options) => {
      const [locale] = localesOf(language)
      if (locale === undefined) return fail([`“${language}” is no language; write a tag such as de or es.`])
      const policy = sayPolicy(sayIn(locale), contact)
      console.log(json ? JSON.stringify(policy, null, 2) : htmlOf(policy, sayIn(locale).locale))
    })
}

const htmlOf = ({ title, sections }: Policy, language: string): string => `<!doctype html>
<html lang="${escaped(language)}">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<style>body { max-width: 42rem; margin: 2rem auto; padding: 0 1rem; font: 1rem/1.5 system-ui, sans-serif }</style>
<h1>${escaped(title)}</h1>
${sections.map(sectionOf).join('\n')}
</html>`

const sectionOf = ({ title, paragraphs }: PolicySection): string =>
  [`<h2>${escaped(title)}</h2>`, ...paragraphs.map(one => `<p>${escaped(one)}</p>`)].join('\n')

const signs: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }
const escaped = (text: string): string => text.replace(/[&<>"]/g, sign => signs[sign] ?? sign)
