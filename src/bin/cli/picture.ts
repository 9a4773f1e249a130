// cellwary picture: any picture as a PNG or SVG file; its alt text is printed.
import { Command } from 'commander'
import { dayOf } from '../../engine/day-of.ts'
import { inLanguage } from '../../engine/in-language.ts'
import { judge } from '../../engine/judge.ts'
import type { Question } from '../../engine/pack/pack.ts'
import { openPrograms, type Programs } from '../../engine/programs.ts'
import { installedPacks } from '../../packs/installed-packs.ts'
import type { Drawing } from '../../pictures/drawing.ts'
import { drawVerdictAlone } from '../../pictures/from-checks/draw-verdict.ts'
import { drawFamily } from '../../pictures/from-packs/draw-family.ts'
import { drawOption, drawQuestion, isMeasuring } from '../../pictures/from-packs/draw-question.ts'
import { drawMeasuring, measuringKinds } from '../../pictures/measuring/draw-measuring.ts'
import { nearest } from '../../words/problem-words.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { fail } from './fail.ts'
import { localesOf } from './locales-of.ts'
import { openCase } from './open-case.ts'
import { isPictureFile, writeDrawing } from './write-drawing.ts'

type Options = { readonly output: string; readonly language: string; readonly rules?: string; readonly json?: true }
/** What the drawings are made from; `say` speaks the reader's language, mistakes are told in English. */
type Services = { readonly programs: Programs; readonly say: Say; readonly day: string }
type Drawn = Drawing | readonly string[]

const english = sayIn('en')

export function pictureCommand(): Command {
  const command = new Command('picture').description('Draw a picture as PNG or SVG, by the ending; print its alt text.')
  const add = (
    usage: string,
    about: string,
    draw: (services: Services, ...names: string[]) => Drawn | Promise<Drawn>,
  ) =>
    command
      .command(usage)
      .description(about)
      .requiredOption('-o, --output <file>', 'the file, ending in .png or .svg')
      .option('--language <tag>', 'of the words in it and of the alt text, such as de', 'en')
      .option('--rules <dir>', 'more rule packs, beside the shipped ones')
      .option('--json', 'print one JSON object')
      .action((...given: unknown[]) => {
        const names = given.filter(one => typeof one === 'string')
        const options = given.find(one => typeof one === 'object') as Options
        return run(options, services => draw(services, ...names))
      })
  add('question <question>', 'a question as it is asked, such as legs', (services, name = '') => {
    const found = questionOf(services, name)
    return 'ask' in found ? (drawQuestion(found) ?? undrawn('question', name)) : found
  })
  add('option <question> <option>', 'one answer, such as legs three', (services, name = '', wanted = '') => {
    const found = questionOf(services, name)
    if (!('ask' in found)) return found
    const options = found.answer.kind === 'options' ? found.answer.options : []
    const option = options.find(one => one.id === wanted)
    if (!option) return unknown('option', wanted, options)
    return drawOption(found, option) ?? undrawn('option', wanted)
  })
  add('family <family>', 'what a family looks like, such as brindlewick-heron', ({ programs, say }, name = '') => {
    const family = programs.families.find(one => one.id === name)
    return family ? (drawFamily(say, family) ?? undrawn('family', name)) : unknown('family', name, programs.families)
  })
  add(
    'verdict <case>',
    'the verdict card of a case as judge takes it; - reads standard input',
    async (services, file = '') => {
      const read = await openCase(file, services.programs, services.day, english)
      if (!read.ok) return read.sentences
      const program = inLanguage(read.value.program, services.say.locale)
      return drawVerdictAlone(services.say, program, judge(program, read.value.answers), read.value.answers)
    },
  )
  add('measuring <kind>', `how to measure: ${measuringKinds.join(', ')}`, (_, name = '') =>
    isMeasuring(name)
      ? drawMeasuring(name)
      : unknown(
          'measuring picture',
          name,
          measuringKinds.map(id => ({ id })),
        ),
  )
  return command
}

async function run(
  { output, language, rules, json }: Options,
  draw: (services: Services) => Drawn | Promise<Drawn>,
): Promise<void> {
  if (!isPictureFile(output, '--output')) return
  const [locale] = localesOf(language)
  if (locale === undefined) {
    fail([english('picture-input.language', { language })])
    process.exitCode = 2
    return
  }
  const say = sayIn(locale)
  const programs = openPrograms((await installedPacks(rules)).packs)
  const drawn = await draw({ programs, say, day: dayOf(Date.now()) })
  if (!('svg' in drawn)) return fail(drawn)
  const alt = await writeDrawing(output, drawn, say)
  if (alt !== undefined) console.log(json ? JSON.stringify({ file: output, alt }, null, 2) : alt)
}

/** A question of any installed pack, in the reader's language; sentences if there is none of that name. */
function questionOf({ programs, say, day }: Services, name: string): Question | readonly string[] {
  // A program holds only the questions that its family's rules read: some are asked of known families alone.
  const families = [null, ...programs.families.map(family => family.id)]
  const all = families.flatMap(family => programs.programFor(family, day) ?? [])
  const program = all.find(one => one.questions.has(name))
  const question = program && inLanguage(program, say.locale).questions.get(name)
  const known = new Set(all.flatMap(one => [...one.questions.keys()]))
  return (
    question ??
    unknown(
      'question',
      name,
      [...known].map(id => ({ id })),
    )
  )
}

const undrawn = (what: string, name: string): string[] => [english('picture-input.undrawn', { what, name })]

function unknown(what: string, name: string, all: readonly { readonly id: string }[]): string[] {
  const known = all.map(one => one.id)
  const near = nearest(name, known) ?? 'none'
  return [english('picture-input.unknown', { what, name, near, known: known.join(', ') })]
}
