// Reads a folder of answers from disk: Markdown with YAML in front in, checked entries out, every problem named with its file.
//
// A file is one entry: YAML between two lines of dashes, then one "# en", "# de" or "# es" section a language. Beside them,
// sources.yaml says the sources they name in other languages than English. A safety instruction is never written out in an entry:
// {safety.now} in a body becomes what `src/words` says in that language, so that everybody is told the same.
import { readdir, readFile } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { z } from 'zod'
import { checkEntries } from '../answers/check-entries.ts'
import { cautions, type Entry, type EntrySource, type EntryText, type Language, languages } from '../answers/entry.ts'
import type { AnswerProblem } from '../answers/problems.ts'
import type { PackProblem } from '../engine/pack/problems.ts'
import { shapeProblems } from '../engine/pack/read-pack.ts'
import { shown } from '../engine/pack/shown-words.ts'
import { inSafetyWords, safetyKeys } from '../words/safety-words.ts'
import { parseYaml, readYaml } from './read-yaml.ts'

export type AnswerFileProblem = { readonly file: string; readonly problem: AnswerProblem | PackProblem }
export type LoadedAnswers = { readonly entries: readonly Entry[]; readonly problems: readonly AnswerFileProblem[] }

const perLanguage = <T extends z.ZodType>(value: T) =>
  z.strictObject({ en: value, de: value.optional(), es: value.optional() })

const frontMatter = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]{2,40}$/),
  caution: z.enum(cautions),
  'in-hand': z.boolean().default(false),
  'for-hurt': z.boolean().default(false),
  related: z.array(z.string()).max(5),
  sources: z.array(
    z.union([
      z.enum(['common-practice', 'memory', 'this-bot']),
      z.strictObject({ published: shown(z.string()) }),
      z.strictObject({ relayed: shown(z.string()) }),
    ]),
  ),
  title: perLanguage(shown(z.string().min(5))),
  keywords: perLanguage(z.array(shown(z.string().min(2)))),
})

const bodiesShown = z.strictObject({ body: z.record(z.string(), shown(z.string())) })

/** By the English name of each source. */
const sourcesFile = z.record(z.string(), z.partialRecord(z.enum(languages), shown(z.string())))
type ToldSources = z.infer<typeof sourcesFile>

/** Where the answers beside the packs of a folder lie. */
export const answersIn = (rules: string): string => join(rules, 'answers')

/**
 * Loads and checks every entry of `folder`, which may be related to those of `beside`; none, without a problem, if there is no
 * such folder. Entries with problems are left out.
 */
export async function loadAnswers(folder: string, beside: readonly Entry[] = []): Promise<LoadedAnswers> {
  const names: string[] = await readdir(folder).catch(() => [])
  const files = names.filter(name => name.endsWith('.md')).sort()
  const told = names.includes('sources.yaml')
    ? await readSources(join(folder, 'sources.yaml'))
    : { sources: {}, problems: [] }
  const read = await Promise.all(
    files.map(async name => {
      const file = join(folder, name)
      return { file, ...readAnswer(await readFile(file, 'utf8'), basename(name, '.md'), told.sources) }
    }),
  )
  const entries = read.flatMap(one => one.entry ?? [])
  const fileOf = new Map(read.map(one => [one.entry?.id, one.file]))
  const problems = read.flatMap(({ file, problems }) => problems.map(problem => ({ file, problem })))
  const checked = checkEntries(entries, beside).map(
    (problem): AnswerFileProblem => ({ file: fileOf.get(problem.at) ?? folder, problem }),
  )
  const wrong = new Set(checked.map(one => one.file))
  return {
    entries: read.flatMap(({ file, entry }) => (entry && !wrong.has(file) ? [entry] : [])),
    problems: [...told.problems, ...problems, ...checked],
  }
}

type ReadAnswer = { readonly entry?: Entry; readonly problems: readonly AnswerFileProblem['problem'][] }

async function readSources(file: string): Promise<{ sources: ToldSources; problems: readonly AnswerFileProblem[] }> {
  const yaml = await readYaml(file)
  const read = sourcesFile.safeParse(yaml.data)
  const problems = yaml.problems.length > 0 || read.success ? yaml.problems : shapeProblems(read.error)
  return { sources: read.success ? read.data : {}, problems: problems.map(problem => ({ file, problem })) }
}

/** One file's text; `name` is the id it has to have, `told` its sources in other languages. */
export function readAnswer(text: string, name: string, told: ToldSources = {}): ReadAnswer {
  const ours = (problem: AnswerProblem): ReadAnswer => ({ problems: [problem] })
  const parts = /^---\r?\n([\s\S]*?)\r?\n---\r?\n([\s\S]*)$/.exec(text)
  if (!parts) return ours({ at: name, code: 'no-front-matter' })
  const yaml = parseYaml(parts[1] ?? '')
  if (yaml.problems.length > 0) return { problems: yaml.problems }
  const head = frontMatter.safeParse(yaml.data)
  if (!head.success) return { problems: shapeProblems(head.error) }
  const { id, caution, related, title, keywords } = head.data
  if (id !== name) return ours({ at: name, code: 'another-name', name: id, wanted: name })
  const bodies = sectionsOf(parts[2] ?? '')
  const written = bodiesShown.safeParse({ body: Object.fromEntries(bodies) })
  if (!written.success) return { problems: shapeProblems(written.error) }
  const texts: Partial<Record<Language, EntryText>> = {}
  const unknown: string[] = []
  for (const language of languages) {
    const said = inSafetyWords(bodies.get(language) ?? '', language)
    unknown.push(...said.unknown)
    const one = { title: title[language], keywords: keywords[language], body: said.text || undefined }
    const lacks = Object.entries(one).flatMap(([key, value]) => (value === undefined ? [key] : []))
    if (one.title && one.keywords && one.body)
      texts[language] = { title: one.title, keywords: one.keywords, body: one.body }
    else if (language === 'en') return ours({ at: id, code: 'no-english' })
    else if (lacks.length < 3) return ours({ at: id, code: 'language-incomplete', language, lacks: lacks.join(', ') })
  }
  const [stray] = unknown
  if (stray !== undefined) return ours({ at: id, code: 'unknown-words', name: stray, known: safetyKeys })
  const sources = head.data.sources.map(source => sourceOf(source, told))
  const inHand = head.data['in-hand']
  const forHurt = head.data['for-hurt']
  return { entry: { id, caution, inHand, forHurt, related, sources, texts: texts as Entry['texts'] }, problems: [] }
}

function sourceOf(written: z.infer<typeof frontMatter>['sources'][number], told: ToldSources): EntrySource {
  if (typeof written === 'string') return { kind: written }
  const [kind, text] =
    'published' in written ? (['published', written.published] as const) : (['relayed', written.relayed] as const)
  return { kind, text, told: told[text] ?? {} }
}

function sectionsOf(body: string): Map<string, string> {
  const parts = body.split(/^# ([a-z]{2})\s*$/m)
  const sections = new Map<string, string>()
  for (let i = 1; i < parts.length; i += 2) {
    const text = (parts[i + 1] ?? '').trim()
    if (text !== '') sections.set(parts[i] ?? '', text)
  }
  return sections
}
