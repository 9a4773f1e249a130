// Why a photo is not taken, said in every language: nothing of the file's name becomes markup, and a long one is shortened.
import { describe, expect, test } from 'vitest'
import type { PhotoRefusal } from '../../src/readers/photo/photo-reader.ts'
import { sayPhotoRefusal } from '../../src/words/photo-words.ts'
import { languages, sayIn } from '../../src/words/say.ts'

const name = 'photo.jpg'
const refusals: readonly PhotoRefusal[] = [
  { code: 'too-many', count: 11, most: 10 },
  { code: 'too-big', name, megabytes: 25 },
  { code: 'too-many-pixels', name, megapixels: 52, side: 9_999 },
  { code: 'not-a-picture', name },
  { code: 'broken', name },
  { code: 'could-not-fetch', name },
  { code: 'not-attached', name },
  { code: 'too-slow' },
  { code: 'too-busy' },
  ...(['heic', 'avif', 'gif', 'animation', 'svg', 'tiff', 'bmp', 'jxl', 'pdf', 'zip', 'video', 'program'] as const).map(
    looksLike => ({ code: 'kind-not-taken', name, looksLike }) as const,
  ),
]

describe.each(languages)('%s', language => {
  const say = sayIn(language)
  test('each refusal has a sentence of its own, with the name and the figures in it', () => {
    const said = refusals.map(refusal => sayPhotoRefusal(say, refusal))
    expect(new Set(said).size).toBe(refusals.length)
    refusals.forEach((refusal, at) => {
      if ('name' in refusal) expect(said[at]).toContain(name)
      for (const value of Object.values(refusal))
        if (typeof value === 'number') expect(said[at]).toContain(new Intl.NumberFormat(language).format(value))
    })
  })
})

test('HEIC is told kindly what to save as', () => {
  const said = sayPhotoRefusal(sayIn('en'), { code: 'kind-not-taken', name: 'IMG.HEIC', looksLike: 'heic' })
  expect(said).toContain('save it as JPEG')
})

test('a name is text, and a long one keeps its end', () => {
  const said = sayPhotoRefusal(sayIn('en'), { code: 'broken', name: `<@1>${'#'.repeat(300)}.png` })
  expect(said).toContain('\\<\\@1\\>')
  expect(said).toContain('…')
  expect(said).toContain('.png”')
  expect(said.length).toBeLessThan(300)
})
