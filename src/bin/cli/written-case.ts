// Reads a case for `cellwary judge`: YAML or JSON with a family and answers, readings as people write them.
import { z } from 'zod'
import type { Answer, Answers } from '../../engine/answers.ts'
import { type RawAnswer, readAnswer } from '../../engine/cases.ts'
import type { Program } from '../../engine/compile.ts'
import type { Question } from '../../engine/pack/pack.ts'
import { shapeProblems } from '../../engine/pack/read-pack.ts'
import { parseYaml } from '../../packs/read-yaml.ts'
import { fieldsOf, readForm, uncertainty } from '../../readings/form.ts'
import { type MenuInstrument, menu } from '../../readings/instrument.ts'
import { sayProblem } from '../../words/problem-words.ts'
import type { Say } from '../../words/say.ts'
import { sayTypedRefusal } from '../../words/typed-words.ts'

const instruments = Object.keys(menu) as [MenuInstrument, ...MenuInstrument[]]
const answer = z.union([
  z.string(),
  z.strictObject({
    reading: z.union([z.number(), z.nan(), z.literal([Infinity, -Infinity])]),
    unit: z.string().optional(),
    u: z.number().nonnegative().optional(),
  }),
  z.strictObject({
    typed: z.union([z.string(), z.record(z.string(), z.string())]),
    with: z.enum(instruments).optional(),
  }),
])
const caseShape = z.strictObject({ family: z.string().optional(), answers: z.record(z.string(), answer) })
export type WrittenAnswer = z.infer<typeof answer>
export type WrittenCase = z.infer<typeof caseShape>

export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly sentences: readonly string[] }

/** Parses the text; sentences name the line or the key that is wrong. */
export function parseCase(text: string, say: Say): Read<WrittenCase> {
  const { data, problems } = parseYaml(text)
  if (problems.length > 0) return { ok: false, sentences: problems.map(problem => sayProblem(say, problem)) }
  const read = caseShape.safeParse(data)
  if (read.success) return { ok: true, value: read.data }
  return { ok: false, sentences: shapeProblems(read.error).map(problem => sayProblem(say, problem)) }
}

/** The answers of a case as the engine takes them. */
export function readWrittenAnswers(program: Program, written: WrittenCase, say: Say): Read<Answers> {
  const sentences: string[] = []
  const answers: Record<string, Answer> = {}
  for (const [name, value] of Object.entries(written.answers)) {
    const at = `answers.${name}`
    const question = program.questions.get(name)
    const known = [...program.questions.keys()]
    const read = question
      ? readOne(question, value, at, say)
      : sayProblem(say, { code: 'unknown-name', at, what: 'question', name, known })
    if (typeof read === 'string') sentences.push(read)
    else answers[name] = read
  }
  return sentences.length > 0 ? { ok: false, sentences } : { ok: true, value: answers }
}

function readOne(question: Question, value: WrittenAnswer, at: string, say: Say): Answer | string {
  if (
    question.answer.kind === 'options' ||
    value === 'cant-tell' ||
    (typeof value === 'object' && 'reading' in value)
  ) {
    const plain = typeof value === 'object' && 'typed' in value ? String(value.typed) : value
    const read = readAnswer(question, withUncertainty(question, plain), at)
    return 'kind' in read ? read : sayProblem(say, read)
  }
  const { quantity, least, most, unit } = question.answer
  const { typed, with: kind } = typeof value === 'string' ? { typed: value, with: undefined } : value
  const [first] = fieldsOf(quantity)
  const fields = typeof typed === 'string' ? { [first?.id ?? 'value']: typed } : typed
  const read = readForm(quantity, fields, kind && { kind }, say.locale)
  if (!read.ok) return `${at}: ${read.refusals.map(one => sayTypedRefusal(say, one)).join(' ')}`
  const problem = readAnswer(question, { reading: read.value, unit, u: read.u }, at)
  return 'kind' in problem
    ? problem
    : sayProblem(say, { code: 'out-of-range', at, name: question.id, value: read.value, least, most, unit })
}

/** A measured value that names neither uncertainty nor instrument is taken with the widest one, never as exact. */
function withUncertainty(question: Question, value: Exclude<WrittenAnswer, { typed: unknown }>): RawAnswer {
  if (typeof value === 'string' || value.u !== undefined) return value as RawAnswer
  const quantity = question.answer.kind === 'reading' ? question.answer.quantity : undefined
  const [field] = quantity === undefined ? [] : fieldsOf(quantity)
  const measured = field !== undefined && field.id === 'value' && !field.printed
  return { ...value, u: measured ? uncertainty(field.quantity, value.reading, undefined) : 0 }
}
