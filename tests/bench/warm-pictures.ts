// What the click benchmark must know of pictures: one of middling size, and what a picture costs that was drawn before.
import Keyv from 'keyv'
import { openPrograms } from '../../src/engine/programs.ts'
import { installedPacks } from '../../src/packs/installed-packs.ts'
import { openPictures } from '../../src/services/pictures/open-pictures.ts'
import type { ShownPicture } from '../../src/services/pictures/shown-picture.ts'
import { sayIn } from '../../src/words/say.ts'

const rounds = 200

async function open() {
  const compiled = openPrograms((await installedPacks(undefined)).packs).compileFor(
    null,
    new Date().toISOString().slice(0, 10),
  )
  if (!compiled.ok) throw new Error('the shipped packs do not compile')
  const { program } = compiled
  const pictures = openPictures(new Keyv())
  const say = sayIn('en')
  const all = () => Promise.all([...program.questions.values()].map(question => pictures.forQuestion(question, say)))
  return { all }
}

/** The shipped question's picture of middling size. */
export async function middlePicture(): Promise<ShownPicture> {
  const shown = (await (await open()).all()).filter(one => one !== undefined)
  shown.sort((a, b) => a.bytes.length - b.bytes.length)
  const middle = shown[Math.floor(shown.length / 2)]
  if (!middle) throw new Error('no shipped question has a picture')
  return middle
}

/** Milliseconds it takes to find and describe a picture that was drawn before, over all shipped questions. */
export async function warmPictureMs(): Promise<number> {
  const { all } = await open()
  const pictured = (await all()).filter(one => one !== undefined).length
  const begun = performance.now()
  for (let i = 0; i < rounds; i++) await all()
  return (performance.now() - begun) / (rounds * pictured)
}
