// A rule as a moderator may begin to write it: the finding's own condition in YAML, with what is missing said in it.
import { stringify } from 'yaml'
import type { Program } from '../../engine/compile.ts'
import type { Condition } from '../../engine/conditions.ts'
import type { Item } from '../outcome.ts'
import type { Finding } from './finding.ts'

/** What stands in the file beside the rule, in the language of whoever drafts it. */
export type DraftWords = {
  /** Each a comment of one line. */
  readonly draft: string
  readonly care: string
  readonly family: string
  readonly cases: string
  /** What the rule says and where it was seen, until somebody has written it. */
  readonly says: string
  readonly seen: string
}

/** A part of a rule pack; `cellwary rules check` says what it still lacks. `program`: of the finding's family. */
export function draftRule(finding: Finding, program: Program | undefined, words: DraftWords): string {
  const { week, id } = finding
  const items = itemsOf(finding)
  const conditions = items.flatMap(item => conditionOf(item, program))
  const when = conditions.length === 1 ? conditions[0] : { all: conditions }
  const name = `seen-in-${week.toLowerCase()}-${id.slice(0, 4)}`
  const fires = Object.fromEntries(conditions.flatMap(one => Object.entries(one)).filter(([key]) => key !== 'all'))
  const rule = {
    id: name,
    kind: 'sign',
    strength: 'weak',
    when,
    says: words.says,
    source: ['seen-here'],
  }
  const sources = {
    'seen-here': { kind: 'common-practice', text: words.seen },
  }
  return [
    `# ${words.draft}`,
    `# ${words.care}`,
    `# ${words.family}`,
    stringify({ sources, rules: [rule] }, { lineWidth: 120 }),
    `# ${words.cases}`,
    ...stringify({
      cases: [
        { name: `${name} fires`, answers: fires, fires: [name] },
        { name: `${name} stays quiet`, answers: {}, quiet: [name] },
        { name: `${name} unknown`, answers: {}, unknown: [name] },
      ],
    })
      .trimEnd()
      .split('\n')
      .map(line => `# ${line}`),
    '',
  ].join('\n')
}

/** What its patterns say goes together; where it has none, the failed checks that rise. */
export function itemsOf({ parts }: Finding): readonly Item[] {
  const together = parts.flatMap(part => (part.is === 'pattern' ? part.pattern.items : []))
  const risen = parts.flatMap(part =>
    part.is === 'rise' && part.rise.rule !== null ? [`rule:${part.rise.rule}` as const] : [],
  )
  return [...new Set(together.length > 0 ? together : risen)]
}

/** Where it was bought is no property of a cell, so it gives no condition. */
function conditionOf(item: Item, program: Program | undefined): Record<string, unknown>[] {
  const [kind, rest] = [item.slice(0, item.indexOf(':')), item.slice(item.indexOf(':') + 1)]
  if (kind === 'answer') {
    const [question = '', option = ''] = rest.split('=')
    return [{ [question]: option }]
  }
  const rule = kind === 'rule' ? program?.rules.find(one => one.id === rest) : undefined
  return rule ? [written(rule.when)] : []
}

/** A condition as packs write it. */
function written(condition: Condition): Record<string, unknown> {
  switch (condition.op) {
    case 'is':
      return { [condition.question]: condition.options.length === 1 ? condition.options[0] : [...condition.options] }
    case 'unless':
      return {
        [condition.question]: {
          unless: condition.options.length === 1 ? condition.options[0] : [...condition.options],
        },
      }
    case 'below':
    case 'above':
      return { [condition.question]: { [condition.op]: condition.limit } }
    case 'not':
      return { not: written(condition.of) }
    default:
      return { [condition.op]: condition.of.map(written) }
  }
}
