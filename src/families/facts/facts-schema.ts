// The shape of a family's facts and of a construction, as zod schemas: what a moderator, a file or the database may hold.
import { z } from 'zod'

const id = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'use lower-case words joined by hyphens, such as vent-disc')
  .max(48)
const shortId = id.max(12)
const text = (most: number) => z.string().trim().min(1).max(most)
const told = (most: number) => z.strictObject({ en: text(most), de: text(most).optional(), es: text(most).optional() })
/** What a moderator writes stands in one language, whichever; what ships stands in all. */
const words = (most: number) => z.union([text(most), told(most)])
export const toldSchema = words(400)
const week = z.string().regex(/^\d{4}-W(0[1-9]|[1-4]\d|5[0-3])$/, 'write a week as 2026-W45')

export const tellingStrengths = ['must', 'strong', 'moderate', 'weak'] as const
export const exceptions = ['open-rewrap', 'protected'] as const

const side = z.record(id, z.array(id).min(1).max(20))
const against = z.strictObject({
  options: z.array(id).min(1).max(20),
  tells: z.enum(tellingStrengths),
  means: z.enum(['counterfeit', 'another-cell']).optional(),
  together: side.optional().describe('Counts only with these answers to other questions.'),
  unless: z.enum(exceptions).optional().describe('Says nothing of a cell that was openly sold so.'),
  says: words(400).optional(),
  from: z.enum(['construction', 'references', 'moderator']),
})
const remark = z.strictObject({
  options: z.array(id).min(1).max(20),
  together: side.optional(),
  says: words(400).optional(),
})
export const traitSchema = z.strictObject({
  made: z.array(id).max(5).default([]).describe('How it is made; nothing known where it is empty.'),
  against: z.array(against).max(4).default([]),
  remarks: z.array(remark).max(4).default([]).describe('What people take for a sign and is none.'),
})
const traits = (most: number) =>
  z.record(id, traitSchema).refine(all => Object.keys(all).length <= most, { error: `at most ${most} features` })

/** What the drawing of a cell takes; the pictures room knows the names. */
const show = z
  .record(z.string().max(20), z.union([z.string().max(20), z.number(), z.boolean()]))
  .refine(all => Object.keys(all).length <= 16, { error: 'at most 16 parts of a drawing' })

export const formats = ['14500', '18650', '20700', '21700', '26650'] as const
export const kinds = ['bare', 'protected'] as const
export const chemistries = ['nickel-or-cobalt', 'iron-phosphate', 'not-known'] as const

export const figuresSchema = z
  .strictObject({
    capacity: z
      .strictObject({
        least: z.number().min(50).max(50_000).optional(),
        typical: z.number().min(50).max(50_000),
        limit: z.number().min(50).max(50_000).optional(),
      })
      .describe('mAh: guaranteed, typical; above the limit (typical and 4 % where it is left out) it is another cell.'),
    currents: z
      .array(
        z.strictObject({
          amps: z.number().min(0.1).max(500),
          cutOff: z.union([z.number().min(40).max(120), z.literal('none'), z.literal('not-said')]),
        }),
      )
      .min(1)
      .max(3)
      .describe('Continuous current in A, with the temperature in °C at which the maker has it cut off.'),
    mass: z
      .strictObject({
        middle: z.number().min(5).max(200),
        cells: z.int().min(1).max(50),
        from: z.enum(['sheet', 'references']),
      })
      .describe('g'),
    size: z.strictObject({ diameter: z.number().min(5).max(60), length: z.number().min(10).max(120) }).describe('mm'),
    resistance: z
      .strictObject({ usual: z.number().min(0.5).max(500) })
      .describe('mΩ at 1 kHz, four wires, about 22 °C.'),
  })
  .partial()

export const knownFakeSchema = z.strictObject({
  id: shortId,
  title: text(60),
  since: week,
  look: z
    .record(id, z.array(id).min(1).max(20))
    .refine(all => Object.keys(all).length >= 1 && Object.keys(all).length <= 8, { error: 'from 1 to 8 features' }),
  copies: z.array(id).max(8).default([]).describe('Features that it copies well.'),
  says: words(300),
  finding: z.string().max(40).optional(),
  state: z.enum(['seen', 'retired']).default('seen'),
})

export const identitySchema = z.strictObject({
  id: z
    .string()
    .regex(/^(f-[a-z0-9]{6,12}|c-[a-z0-9]+(-[a-z0-9]+)*)$/)
    .max(26),
  name: text(60),
  maker: text(60),
  alsoCalled: z.array(text(40)).max(5).default([]),
  format: z.enum(formats),
  kind: z.enum(kinds),
  chemistry: z.enum(chemistries),
})

export const factsSchema = z.strictObject({
  facts: z.literal(1),
  identity: identitySchema,
  from: z.strictObject({ construction: id, version: z.string().max(20) }).nullable(),
  traits: traits(25),
  figures: figuresSchema.default({}),
  fakes: z.array(knownFakeSchema).max(20).default([]),
  alsoEnough: z.array(id).max(16).default([]).describe('Further rules that must be met before "nothing found".'),
  show: show.default({}),
})

export const constructionSchema = z.strictObject({
  construction: id.max(24),
  version: z.string().regex(/^\d+\.\d+\.\d+$/),
  written: z.iso.date(),
  title: told(100),
  formats: z.array(z.enum(formats)).min(1),
  kinds: z.array(z.enum(kinds)).min(1),
  sibling: z.record(id, id).default({}).describe('The same in another size.'),
  show,
  sources: z.record(id, z.strictObject({ kind: z.enum(['common-practice', 'memory']), text: text(300) })),
  traits: traits(25),
})

export type RawFacts = z.input<typeof factsSchema>
export type Facts = z.infer<typeof factsSchema>
export type Identity = Facts['identity']
export type Trait = z.infer<typeof traitSchema>
export type Against = Trait['against'][number]
export type Remark = Trait['remarks'][number]
export type Figures = Facts['figures']
export type KnownFake = z.infer<typeof knownFakeSchema>
export type Construction = z.infer<typeof constructionSchema>
export type Told = z.infer<typeof toldSchema>
export type TellingStrength = (typeof tellingStrengths)[number]
export type Exception = (typeof exceptions)[number]
