// Says why photos are not taken; the file's name is shown as text, and no longer than anybody reads.
import type { PhotoRefusal } from '../readers/photo/photo-reader.ts'
import { plain } from './plain.ts'
import type { Say, Values } from './say.ts'

const longestName = 60

export function sayPhotoRefusal(say: Say, refusal: PhotoRefusal): string {
  const { code, ...context } = refusal
  const values = 'name' in context ? { ...context, name: plain(shortened(context.name)) } : context
  return say(`photo-refusal.${code}`, values satisfies Values)
}

/** The end stays: it says what kind of file a person believes it to be. */
function shortened(name: string): string {
  const letters = [...name]
  return letters.length <= longestName ? name : `${letters.slice(0, 40).join('')}…${letters.slice(-19).join('')}`
}
