// Reads a rule pack from parsed YAML: shape first (zod), then every name it mentions; all problems at once, as data.
import type { z } from 'zod'
import { unitOf } from '../../ground/quantities.ts'
import { atomsOf, questionsOf } from '../conditions.ts'
import type { Family, Option, Pack, Picture, Question, Rule } from './pack.ts'
import type { PackProblem } from './problems.ts'
import { readCondition } from './read-condition.ts'
import { packSchema, type RawPack } from './schema.ts'

export type PackReading =
  | { readonly ok: true; readonly pack: Pack }
  | { readonly ok: false; readonly problems: readonly PackProblem[] }

/**
 * Checks and reads one pack. `others` are the packs already read, for `uses`; `digest` is the hash of what was written, by
 * which a verdict names the pack. Nothing of a pack with a problem is kept.
 */
export function readPack(raw: unknown, others: readonly Pack[] = [], digest = ''): PackReading {
  const shape = packSchema.safeParse(raw)
  if (!shape.success) return { ok: false, problems: shapeProblems(shape.error) }
  const written = shape.data
  const problems: PackProblem[] = []
  const used = written.uses?.flatMap(name => {
    const pack = others.find(other => other.id === name)
    if (!pack) problems.push({ code: 'missing-pack', at: 'uses', name, known: others.map(other => other.id) })
    return pack ? [pack] : []
  })
  const base = used ?? []
  const questions = written.questions.map(readQuestion)
  const inherited = base.flatMap(pack => pack.questions)
  findDuplicates(
    'questions',
    'question',
    [...inherited, ...questions].map(q => q.id),
    problems,
  )
  for (const [i, question] of questions.entries())
    if (question.answer.kind === 'options')
      findDuplicates(
        `questions[${i}].options`,
        'option',
        question.answer.options.map(o => o.id),
        problems,
      )
  const byId = new Map([...inherited, ...questions].map(question => [question.id, question]))
  const rules = written.rules.map((rule, i) => readRule(rule, i, written, byId, problems))
  const allRules = [...base.flatMap(pack => pack.rules), ...rules]
  findDuplicates(
    'rules',
    'rule',
    allRules.map(rule => rule.id),
    problems,
  )
  const families = written.families.map((family, i) => readFamily(family, i, written.pack, allRules, byId, problems))
  findDuplicates(
    'families',
    'family',
    [...base.flatMap(pack => pack.families), ...families].map(f => f.id),
    problems,
  )
  if (problems.length > 0) return { ok: false, problems }
  const { pack: id, version, written: day, title, about, language = 'en', uses = [], sources } = written
  const names = { id, version, digest, written: day, title, about, language, uses, sources }
  return { ok: true, pack: { ...names, questions, rules, families, words: {} } }
}

function readQuestion(raw: RawPack['questions'][number]): Question {
  const { options, reading, quick = false, unsureOdds = 0.5, picture, look, topic, needs, toldBy, ...rest } = raw
  const answer: Question['answer'] = reading
    ? { kind: 'reading', ...reading, unit: unitOf[reading.quantity] }
    : { kind: 'options', options: (options ?? []).map(readOption) }
  return {
    ...rest,
    quick,
    ...(topic && { topic }),
    unsureOdds,
    answer,
    ...(look === undefined ? {} : { look }),
    ...(needs && { needs }),
    ...(toldBy && { toldBy }),
    ...(picture && { picture: readPicture(picture) }),
  }
}

function readPicture(raw: NonNullable<RawPack['questions'][number]['picture']>): Picture {
  const { view, pointAt, show = {}, measuring = '' } = raw
  if (view === undefined) return { kind: 'measuring', measuring }
  return { kind: 'cell', view, show, ...(pointAt && { pointAt }) }
}

function readOption(raw: NonNullable<RawPack['questions'][number]['options']>[number]): Option {
  const { odds = 1, show = {}, hint, ...rest } = raw
  return { ...rest, odds, show, ...(hint === undefined ? {} : { hint }) }
}

function readRule(
  raw: RawPack['rules'][number],
  i: number,
  pack: RawPack,
  questions: ReadonlyMap<string, Question>,
  problems: PackProblem[],
): Rule {
  const at = `rules[${i}] (${raw.id})`
  findUnknown(`${at}.source`, 'source', raw.source, Object.keys(pack.sources), problems)
  findUnknown(
    `${at}.families`,
    'family',
    raw.families ?? [],
    pack.families.map(family => family.id),
    problems,
  )
  const when = readCondition(raw.when, questions, `${at}.when`, problems)
  const { families, ...rest } = raw
  const common = { pack: pack.pack, when, ...(families && { families }) }
  if (rest.kind === 'must' || rest.kind === 'hazard') return { ...rest, ...common }
  const { validUntil, ...ageless } = rest
  return { ...ageless, ...common, ...(validUntil && { validUntil }) }
}

function readFamily(
  raw: RawPack['families'][number],
  i: number,
  pack: string,
  rules: readonly Rule[],
  questions: ReadonlyMap<string, Question>,
  problems: PackProblem[],
): Family {
  const at = `families[${i}] (${raw.id})`
  for (const [name, value] of Object.entries(raw.given)) {
    const question = questions.get(name)
    if (!question) problems.push({ code: 'unknown-name', at, what: 'question', name, known: [...questions.keys()] })
    else if (question.answer.kind !== 'options') problems.push({ code: 'not-an-option-question', at, name })
    else
      findUnknown(
        at,
        'option',
        [value],
        question.answer.options.map(o => o.id),
        problems,
      )
  }
  const mine = rules.filter(rule => rule.families === undefined || rule.families.includes(raw.id))
  findUnknown(
    `${at}.enough`,
    'rule',
    raw.enough,
    mine.map(rule => rule.id),
    problems,
  )
  for (const name of raw.enough) {
    const rule = mine.find(candidate => candidate.id === name)
    const open = rule && atomsOf(rule.when).some(atom => raw.given[atom.question] === undefined)
    if (rule && (rule.kind === 'no-bearing' || !open)) problems.push({ code: 'enough-cannot-be-met', at, name })
  }
  findUnknown(
    `${at}.waives`,
    'rule',
    raw.waives ?? [],
    mine.map(rule => rule.id),
    problems,
  )
  const kept = mine.filter(rule => rule.kind === 'hazard' && !raw.waives?.includes(rule.id))
  for (const name of raw.waives ?? []) {
    const rule = mine.find(one => one.id === name && one.kind === 'hazard')
    const reads = rule ? questionsOf(rule.when) : []
    const covered = kept.some(other => reads.some(question => questionsOf(other.when).includes(question)))
    if (rule && !covered) problems.push({ code: 'hazard-cannot-be-waived', at, name })
    if (raw.enough.includes(name)) problems.push({ code: 'enough-cannot-be-met', at, name })
  }
  findUnknown(
    `${at}.notWhile`,
    'rule',
    raw.notWhile ?? [],
    mine.map(rule => rule.id),
    problems,
  )
  findUnknown(`${at}.first`, 'question', raw.first ?? [], [...questions.keys()], problems)
  const { about, show = {}, waives, first, notWhile, openEnded, ...rest } = raw
  return {
    ...rest,
    pack,
    show,
    ...(about === undefined ? {} : { about }),
    ...(waives && { waives }),
    ...(first && { first }),
    ...(notWhile && { notWhile }),
    ...(openEnded && { openEnded }),
  }
}

function findDuplicates(at: string, what: string, names: readonly string[], problems: PackProblem[]): void {
  const seen = new Set<string>()
  for (const name of names) {
    if (seen.has(name)) problems.push({ code: 'duplicate', at, what, name })
    seen.add(name)
  }
}

/** Names that are not among the known ones become problems. */
export function findUnknown(
  at: string,
  what: string,
  names: readonly string[],
  known: readonly string[],
  problems: PackProblem[],
): void {
  for (const name of names) if (!known.includes(name)) problems.push({ code: 'unknown-name', at, what, name, known })
}

/** zod's issues as problems; an unknown key is named, since it is mostly a typo. */
export function shapeProblems(error: z.ZodError): PackProblem[] {
  return error.issues.flatMap((issue): PackProblem[] => {
    const at = issue.path.map(String).join('.') || '(top)'
    if (issue.code === 'unrecognized_keys') return issue.keys.map(name => ({ code: 'unknown-key' as const, at, name }))
    return [{ code: 'shape', at, says: issue.message }]
  })
}
