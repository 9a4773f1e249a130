// Puts the words of safety into a text that names them, such as an entry of the answers: {safety.now} becomes the instruction itself.
import type { Language } from '../answers/entry.ts'
import { safety } from './en/safety.ts'
import { sayIn } from './say.ts'

type SafetyKey = keyof typeof safety

/** The names a text may use between braces. */
export const safetyKeys: readonly string[] = Object.keys(safety)

const isSafetyKey = (name: string): name is SafetyKey => Object.hasOwn(safety, name)

/** The text with every name said in `language`; names that there are no words for stay, and are listed. */
export function inSafetyWords(text: string, language: Language): { text: string; unknown: readonly string[] } {
  const say = sayIn(language)
  const unknown: string[] = []
  const said = text.replace(/\{([^{}\n]*)\}/g, (whole, name: string) => {
    if (isSafetyKey(name)) return say(name)
    unknown.push(name)
    return whole
  })
  return { text: said, unknown }
}
