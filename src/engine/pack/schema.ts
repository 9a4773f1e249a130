// The shape of a rule pack's file, as a zod schema; the editors' JSON Schema (rules/pack.schema.json) is generated from it.
import { z } from 'zod'
import { quantities } from '../../ground/quantities.ts'
import { tools } from '../../ground/tools.ts'
import { urgencies } from '../../ground/urgencies.ts'
import { verdicts } from '../../ground/verdicts.ts'
import { shown } from './shown-words.ts'

const id = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'use lower-case words joined by hyphens, such as torn-wrap')
  .max(48)
  // Answers are looked up by id in plain objects, which have some names of their own.
  .refine(text => !(text in {}), 'choose another id: this one has a meaning in JavaScript')
const words = (most: number) => shown(z.string().trim().min(1).max(most))
const day = z.iso.date()
/** A language without a region: texts are written once for all of its regions. */
const language = z.string().regex(/^[a-z]{2,3}$/, 'write a language as two or three small letters, such as de')

/** Where a statement comes from, and how far it was checked. */
const source = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('published'),
    text: words(300).describe('Who published it, where and when.'),
    seen: z
      .enum(['text', 'excerpt', 'second-hand'])
      .describe('What was read: the text, a part of it, or a page about it.'),
  }),
  z.strictObject({ kind: z.literal('derived'), text: words(300).describe('The figures it follows from, and how.') }),
  z.strictObject({ kind: z.literal('common-practice'), text: words(300) }).describe('What the trade does; no source.'),
  z.strictObject({ kind: z.literal('memory'), text: words(300) }).describe('From memory, not verified.'),
])

/** Which part of the drawn cell a question is about; read by the pictures room, which knows the views and their parts. */
const show = z.record(z.string(), z.union([z.string(), z.number(), z.boolean()]))
const picture = z
  .strictObject({
    view: id.optional().describe('From where the cell is seen: side, top, top-angle or cut-away.'),
    pointAt: id.optional(),
    show: show.optional(),
    measuring: id.optional().describe('In place of a cell: a picture of how to measure, such as scale.'),
  })
  .refine(p => (p.view === undefined) !== (p.measuring === undefined), {
    error: 'a picture has either a view of the cell or measuring, not both and not neither',
  })
  .refine(p => p.measuring === undefined || (p.pointAt === undefined && p.show === undefined), {
    error: 'a picture of measuring takes neither pointAt nor show',
  })

const answerOption = z.strictObject({
  id,
  label: words(80).describe('What the button says (at most 80 characters).'),
  hint: words(100).optional(),
  odds: z
    .number()
    .positive()
    .max(100)
    .optional()
    .describe(
      'How often it is picked, against the other options (1). Orders the questions only; says nothing of the market.',
    ),
  show: show.optional(),
})

const readingShape = z
  .strictObject({
    quantity: z.enum(quantities),
    least: z.number().describe('The least value that is not a slip of the hand, in the canonical unit.'),
    most: z.number(),
  })
  .refine(r => r.least < r.most, { error: 'least must be under most' })

const question = z
  .strictObject({
    id,
    ask: words(300).describe('The question as the person reads it.'),
    look: words(600).optional().describe('Where to look, or how to do it without harm.'),
    care: z
      .enum(['look', 'handle', 'meter', 'unwrap', 'bench'])
      .describe(
        'What it takes: only looking, holding the cell, a meter or scale, lifting wrap or ring, a load on a bench.',
      ),
    effort: z.number().min(0.5).max(60).describe('Rough minutes of a person who has what it takes at hand.'),
    quick: z.boolean().optional().describe('Asked in a quick check too.'),
    topic: z
      .literal('label')
      .optional()
      .describe('label: what is printed, listed or said of the cell; asked before it is looked at closely.'),
    needs: z
      .array(z.enum(tools))
      .min(1)
      .optional()
      .describe('Tools it cannot be answered without; it is not asked of somebody who has said that one is not there.'),
    toldBy: z
      .array(z.enum(tools))
      .min(1)
      .optional()
      .describe('Tools that may have told the answer already; whoever has one is asked early, in a quick check too.'),
    picture: picture.optional(),
    options: z.array(answerOption).min(2).max(20).optional(),
    reading: readingShape.optional(),
    unsureOdds: z
      .number()
      .positive()
      .max(100)
      .optional()
      .describe('How often people cannot tell, against an option (0.5).'),
  })
  .refine(q => (q.options === undefined) !== (q.reading === undefined), {
    error: 'a question has either options or a reading, not both and not neither',
  })

const atom = z.union([
  id,
  z.array(id).min(1),
  z
    .strictObject({ unless: z.union([id, z.array(id).min(1)]) })
    .describe('Holds unless one of these options was answered; who cannot tell excuses nothing.'),
  z.strictObject({ below: z.number() }),
  z.strictObject({ above: z.number() }),
])

export type RawCondition = {
  all?: RawCondition[] | undefined
  any?: RawCondition[] | undefined
  not?: RawCondition | undefined
  [question: string]: RawCondition[] | RawCondition | z.infer<typeof atom> | undefined
}
const condition: z.ZodType<RawCondition> = z.lazy(() =>
  z
    .object({
      all: z.array(condition).min(1).optional(),
      any: z.array(condition).min(1).optional(),
      not: condition.optional(),
    })
    .catchall(atom)
    .refine(c => Object.keys(c).length > 0, { error: 'an empty condition says nothing' }),
) as z.ZodType<RawCondition>

const ruleBase = {
  id,
  when: condition.describe('The answers that make the rule fire. Several questions side by side must all hold.'),
  says: words(400).describe('What is said when it fires: one or two plain sentences.'),
  source: z.array(id).min(1),
  families: z.array(id).min(1).optional().describe('Only for these families of the pack.'),
}
/** A must has none: what is impossible stays so. Its line lies far enough beyond the best known that no ageing figure reaches it. */
const ageing = {
  validUntil: day.optional().describe('After this day the rule no longer counts; for figures that age.'),
}
const rule = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('must'),
    ...ruleBase,
    means: z.enum(['counterfeit', 'another-cell', 'salvaged', 'impossible-claim']),
  }),
  z.strictObject({ kind: z.literal('sign'), ...ruleBase, ...ageing, strength: z.enum(['weak', 'moderate', 'strong']) }),
  z.strictObject({ kind: z.literal('hazard'), ...ruleBase, act: z.enum(urgencies) }),
  z.strictObject({ kind: z.literal('no-bearing'), ...ruleBase, ...ageing }),
])

const family = z.strictObject({
  id,
  name: words(60),
  maker: words(60),
  about: words(300).optional(),
  given: z.record(id, id).describe('Answers that are settled by what the cell is sold as, such as its format.'),
  enough: z.array(id).min(1).describe('Rules that must all be answered and met before "nothing found" can be said.'),
  waives: z
    .array(id)
    .min(1)
    .optional()
    .describe(
      'Rules that do not hold for this family, such as the charge voltage of a cell charged to 4.35 V. A hazard can be waived only where another hazard still reads the same questions.',
    ),
  show: show.optional(),
  first: z
    .array(id)
    .optional()
    .describe('Questions asked right after what is urgent, such as what the cell was sold as.'),
  notWhile: z
    .array(id)
    .optional()
    .describe('Rules that keep "nothing found" away while they hold, of whatever kind: an exception was used.'),
  openEnded: z.boolean().optional().describe('"Nothing found" is never said, however much was met.'),
})

export const packSchema = z.strictObject({
  pack: id,
  version: z.string().regex(/^\d+\.\d+\.\d+$/, 'write the version as three numbers, such as 1.0.0'),
  written: day.describe(
    'The day on which it was last gone over. Its cases are judged as of this day, so that ageing figures do not fail them.',
  ),
  title: words(80),
  about: words(600),
  language: language.optional().describe('The language its texts are written in, such as de; en if it says nothing.'),
  uses: z.array(id).optional().describe('Packs whose questions and rules this one builds on.'),
  sources: z.record(id, source),
  questions: z.array(question).default([]),
  rules: z.array(rule).min(1),
  families: z.array(family).default([]),
})

/** A further file of a pack, in its folder `parts`. */
export const partSchema = packSchema.pick({ sources: true, questions: true, rules: true, families: true }).partial()

const optionWords = z.union([words(80), z.strictObject({ label: words(80), hint: words(100).optional() })])

/** A pack's texts in another language (`words/de.yaml`), by id; the names of families stay as they are. */
export const packWordsSchema = z.strictObject({
  questions: z
    .record(
      id,
      z.strictObject({
        ask: words(300).optional(),
        look: words(600).optional(),
        options: z.record(id, optionWords).optional(),
      }),
    )
    .default({}),
  rules: z.record(id, words(400)).default({}).describe('What each rule says when it fires.'),
  families: z.record(id, words(300)).default({}).describe('What is said about each family.'),
  sources: z
    .record(id, words(120))
    .default({})
    .describe('What each published source is called: who wrote it, and when.'),
})

const letterOption = z.union([words(160), z.literal(false)])
const letterQuestion = z.union([
  words(80).describe('The thing by its name, such as "Measured weight"; the answer stands after it.'),
  z.literal(false).describe('Tells of whoever has the cell: it stands in no letter.'),
  z.strictObject({
    is: words(80).optional(),
    options: z.record(id, letterOption).describe('What is said in place of "thing: answer", or false for nothing.'),
  }),
])
/** What a letter to a seller says of a pack's questions and rules, in one language (`letters/de.yaml`). */
export const lettersSchema = z.strictObject({
  questions: z.record(id, letterQuestion).default({}),
  rules: z
    .record(id, words(200))
    .default({})
    .describe('Why it cannot be so: one sentence of fact that accuses nobody.'),
})

const caseAnswer = z.union([
  id,
  z.strictObject({ reading: z.number(), unit: z.string().optional(), u: z.number().nonnegative().default(0) }),
])
const caseSchema = z.strictObject({
  case: words(160).describe('One sentence: what is shown.'),
  family: id.optional(),
  answers: z.record(id, caseAnswer).describe("An option's id, a reading, or cant-tell."),
  rules: z.record(id, z.enum(['fires', 'quiet', 'unknown'])).default({}),
  verdict: z.enum(verdicts).optional(),
})
export const casesSchema = z.array(caseSchema).min(1)

export type RawPack = z.infer<typeof packSchema>
export type RawLetters = z.infer<typeof lettersSchema>
export type RawPackWords = z.infer<typeof packWordsSchema>
export type RawCase = z.infer<typeof caseSchema>
