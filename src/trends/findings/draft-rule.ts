// A rule as a moderator may begin to write it: the finding's own condition in YAML, with what is missing said in it.
import { stringify } from 'yaml'
import type { Program } from '../../engine/compile.ts'
import type { Condition } from '../../engine/conditions.ts'
import type { Item } from '../outcome.ts'
import type { Finding } from './finding.ts'

/** A part of a rule pack; `cellwary rules check` says what it still lacks. `program`: of the finding's family. */
export function draftRule(finding: Finding, program: Program | undefined): string {
  const { family, week, id } = finding
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
    says: 'Write here in one or two sentences what this tells, and what it does not.',
    source: ['seen-here'],
  }
  const sources = {
    'seen-here': { kind: 'common-practice', text: `Seen together in this server's checks up to ${week}.` },
  }
  return [
    '# A draft. It counts for nothing until somebody has read it, finished it and put it into a pack.',
    '# A fail can be strong evidence; a pass proves nothing. Choose must, sign or no-bearing with care.',
    `# Found among the checks of: ${family}`,
    stringify({ sources, rules: [rule] }, { lineWidth: 120 }),
    '# Cases for the folder cases/: one in which it fires, one in which it stays quiet, one that leaves it unknown.',
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
