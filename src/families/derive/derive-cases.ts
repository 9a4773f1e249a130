// The cases of a derived pack: each rule is seen to fire on every option, to stay quiet on a cell as made, and to stay unknown.

import type { Answers } from '../../engine/answers.ts'
import { cantTell, option, reading } from '../../engine/answers.ts'
import type { Condition } from '../../engine/conditions.ts'
import { weigh } from '../../engine/conditions.ts'
import type { Pack } from '../../engine/pack/pack.ts'
import type { RawCase } from '../../engine/pack/schema.ts'
import type { CaseAnswers, RuleDraft } from './rule-draft.ts'

/**
 * A must's firing cases expect "ruled out" and a strong sign's "doubtful", unless another rule of the same pack rules out on the
 * same answers; `conditions` are the read conditions of the pack's own rules by id.
 */
export function deriveCases(
  family: string,
  rules: readonly RuleDraft[],
  base: Pack,
  conditions: ReadonlyMap<string, Condition>,
  given: CaseAnswers,
): RawCase[] {
  const musts = [
    ...rules.filter(rule => rule.weight.kind === 'must').flatMap(rule => conditions.get(rule.id) ?? []),
    ...base.rules.filter(rule => rule.kind === 'must').map(rule => rule.when),
  ]
  const expected = (rule: RuleDraft, answers: CaseAnswers): RawCase['verdict'] => {
    const { weight } = rule
    if (weight.kind === 'must') return 'ruled-out'
    if (weight.kind !== 'sign' || weight.strength !== 'strong') return undefined
    const all = readCaseAnswers({ ...given, ...answers })
    return musts.some(when => weigh(when, all) === 'true') ? 'ruled-out' : 'doubtful'
  }
  return rules.flatMap(rule => [
    ...rule.fires.map((answers, i): RawCase => {
      const said = withinBounds(answers, base)
      const verdict = expected(rule, said)
      return {
        case: `${rule.id} fires${i > 0 ? ` (${i + 1})` : ''}`,
        family,
        answers: said,
        rules: { [rule.id]: 'fires' },
        ...(verdict && { verdict }),
      }
    }),
    {
      case: `${rule.id} stays quiet`,
      family,
      answers: withinBounds(rule.quiet, base),
      rules: { [rule.id]: 'quiet' },
    },
    {
      case: `${rule.id} stays unknown`,
      family,
      answers: withinBounds(rule.unknown, base),
      rules: { [rule.id]: 'unknown' },
    },
  ])
}

/** A reading of a case stays within what its question takes. */
function withinBounds(answers: CaseAnswers, base: Pack): CaseAnswers {
  return Object.fromEntries(
    Object.entries(answers).map(([id, answer]) => {
      const asked = base.questions.find(one => one.id === id)?.answer
      if (typeof answer === 'string' || asked?.kind !== 'reading') return [id, answer]
      return [id, { ...answer, reading: Math.min(Math.max(answer.reading, asked.least), asked.most) }]
    }),
  )
}

function readCaseAnswers(raw: CaseAnswers): Answers {
  return Object.fromEntries(
    Object.entries(raw).map(([id, answer]) => {
      if (typeof answer !== 'string') return [id, reading(answer.reading, answer.u)]
      return [id, answer === 'cant-tell' ? cantTell : option(answer)]
    }),
  )
}
