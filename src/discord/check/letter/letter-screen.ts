// Shows a letter to the seller to whoever writes it: steps first where there is danger, then the text to copy, change or begin anew.
import {
  type APIMessageTopLevelComponent,
  type APIModalInteractionResponseCallbackData,
  type APIStringSelectComponent,
  ButtonStyle,
  ComponentType,
} from 'discord.js'
import type { CheckId } from '../../../check/ids.ts'
import type { VerdictScreen } from '../../../check/screen.ts'
import { encodeBuying, placeOf } from '../../../custom-ids/buying-id.ts'
import { encodeLetter, isLetterLanguage, type LetterLanguage, letterLanguages } from '../../../custom-ids/letter-id.ts'
import type { Program } from '../../../engine/compile.ts'
import { accusationIn } from '../../../words/accusing.ts'
import { longestLetter } from '../../../words/letter/draft-letter.ts'
import { fenced, plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { form, textField } from '../../message/form.ts'
import { cut, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { stepsFor } from '../show/steps.ts'

export type Letter = { readonly text: string; readonly language: LetterLanguage }

/** `say` is the reader's; the letter has a language of its own. `program` in the reader's language. */
export function showLetter(say: Say, program: Program, screen: VerdictScreen, letter: Letter): ShownMessage {
  const { check, judgement } = screen
  const accuses = accusationIn(letter.text)
  const steps = stepsFor(program, screen, say).map(step => `- ${step}`)
  return message([
    ...(judgement.verdict === 'danger' ? [text([`**${say('letter.first')}**`, ...steps].join('\n'))] : []),
    text(`### ${say('letter.title')}\n${say('letter.about')}`),
    text(fenced(letter.text)),
    ...(accuses === undefined ? [] : [text(say('letter.accuses', { word: plain(accuses) }))]),
    ...rows([languageMenu(say, check.id, letter.language)], 1),
    ...rows([
      pressButton(
        encodeLetter({ is: 'change', check: check.id, language: letter.language }),
        say('letter.change'),
        ButtonStyle.Primary,
      ),
      pressButton(encodeBuying({ is: 'open', place: placeOf('suspect') }), say('buying.open.suspect')),
    ]),
    small(`${say('next.no-post')}\n${say('caution.line')}`),
  ])
}

/** The letter that a message shows; undefined where it shows none. */
export function letterIn(parts: readonly APIMessageTopLevelComponent[]): string | undefined {
  const texts = parts.flatMap(part => (part.type === ComponentType.TextDisplay ? [part.content] : []))
  return texts.map(content => /^```\n([\s\S]*)\n```$/.exec(content)?.[1]).find(found => found !== undefined)
}

/** The person's own language, where a letter can be written in it. */
export function ownLanguage(say: Say): LetterLanguage {
  const [language] = say.locale.split('-')
  return isLetterLanguage(language) ? language : 'en'
}

/** The person's own language first; choosing one begins the letter anew. */
function languageMenu(say: Say, check: CheckId, chosen: LetterLanguage): APIStringSelectComponent {
  const own = ownLanguage(say)
  const names = new Intl.DisplayNames([say.locale], { type: 'language' })
  return {
    type: ComponentType.StringSelect,
    custom_id: encodeLetter({ is: 'language', check }),
    placeholder: cut(say('letter.language'), 150),
    options: [own, ...letterLanguages.filter(one => one !== own)].map(language => ({
      value: language,
      label: cut(say('letter.in', { language: names.of(language) ?? language }), 100),
      description: cut(say('letter.language'), 100),
      default: language === chosen,
    })),
  }
}

export const letterField = 'letter'

export function letterForm(
  say: Say,
  check: CheckId,
  { text: value, language }: Letter,
  opening: string,
): APIModalInteractionResponseCallbackData {
  return form(encodeLetter({ is: 'changed', check, language, opening }), say('letter.title'), [
    textField(
      letterField,
      { label: say('letter.form'), hint: say('letter.form.hint') },
      { most: longestLetter, required: true, value },
    ),
  ])
}
