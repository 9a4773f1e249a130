// The pictures of messages with their alt texts: those drawn from packs are rendered once and kept, those of a person's check are not.
import type { Question } from '../../engine/pack/pack.ts'
import { joinAlt } from '../../pictures/alt/join-alt.ts'
import type { Drawing } from '../../pictures/drawing.ts'
import { drawVerdict } from '../../pictures/from-checks/draw-verdict.ts'
import { drawFamily } from '../../pictures/from-packs/draw-family.ts'
import { drawQuestion } from '../../pictures/from-packs/draw-question.ts'
import { drawMeasuring } from '../../pictures/measuring/draw-measuring.ts'
import { pictureKey, toPng } from '../../pictures/png.ts'
import { sayAltFact } from '../../words/alt-words.ts'
import type { Say } from '../../words/say.ts'
import type { Pictures } from './pictures.ts'
import type { ShownPicture } from './shown-picture.ts'

/** Keeps rendered pictures by digest, as Keyv does; what it loses is drawn again. */
export type PictureMemory = { get(key: string): Promise<unknown>; set(key: string, value: unknown): Promise<unknown> }

/** How many rendered pictures stay in the process; the shipped packs have a few dozen. */
const mostHere = 200

export function openPictures(memory: PictureMemory): Pictures {
  const here = new Map<string, Promise<Uint8Array>>()
  const drawn = new WeakMap<Question, Drawing | null>()

  async function render(key: string, drawing: Drawing): Promise<Uint8Array> {
    // The memory is a convenience: without it the picture is drawn.
    const known = await memory.get(key).catch(() => undefined)
    if (typeof known === 'string') return Buffer.from(known, 'base64')
    const png = await toPng(drawing)
    await memory.set(key, png.toString('base64')).catch(() => undefined)
    return png
  }

  function pngOf(drawing: Drawing): Promise<Uint8Array> {
    const key = pictureKey(drawing)
    const known = here.get(key)
    if (known !== undefined) return known
    const png = render(key, drawing)
    if (here.size >= mostHere) here.clear()
    here.set(key, png)
    // A failed rendering is tried again the next time.
    png.catch(() => here.delete(key))
    return png
  }

  async function shown(name: string, drawing: Drawing, png: Promise<Uint8Array>, say: Say): Promise<ShownPicture> {
    const alt = joinAlt(drawing.about, (code, values) => sayAltFact(say, code, values))
    return { name, bytes: await png, alt }
  }
  /** What is drawn from a pack is the same for everybody. */
  const kept = (name: string, drawing: Drawing, say: Say) => shown(name, drawing, pngOf(drawing), say)
  /** What is drawn from somebody's answers or log is nearly one of a kind: it is rendered each time and kept nowhere. */
  const afresh = (name: string, drawing: Drawing, say: Say) => shown(name, drawing, toPng(drawing), say)

  return {
    ofDrawing: afresh,
    forBench: say => kept('safe-bench.png', drawMeasuring('safe-bench'), say),
    async forQuestion(question, say): Promise<ShownPicture | undefined> {
      let drawing = drawn.get(question)
      if (drawing === undefined) {
        drawing = drawQuestion(question) ?? null
        drawn.set(question, drawing)
      }
      return drawing ? kept(`${question.id}.png`, drawing, say) : undefined
    },
    async forVerdict(program, judgement, answers, say): Promise<ShownPicture[]> {
      return [await afresh('verdict.png', drawVerdict(say, program, judgement, answers), say)]
    },
    async forDetails(program, judgement, say): Promise<ShownPicture[]> {
      // Nobody is sent back to a dangerous cell to compare it.
      const family = judgement.verdict === 'danger' || !program.family ? undefined : drawFamily(say, program.family)
      return family ? [await kept('family.png', family, say)] : []
    },
  }
}
