// The picture of a question: where to look, and what each answer looks like, lettered as the buttons are; rendered once.
import type { Question } from '../engine/pack/pack.ts'
import { describe } from '../pictures/alt/describe.ts'
import { joinAlt } from '../pictures/alt/join-alt.ts'
import { drawCell } from '../pictures/cell/draw-cell.ts'
import { drawOptions } from '../pictures/cell/draw-options.ts'
import type { CellParameters } from '../pictures/cell/parameters.ts'
import { readCellParameters } from '../pictures/cell/read-cell-parameters.ts'
import type { Drawing } from '../pictures/drawing.ts'
import { pictureKey, toPng } from '../pictures/png.ts'
import type { Pictures, ShownPicture } from './desk.ts'
import { sayAltFact } from './words/alt-words.ts'
import type { Say } from './words/say.ts'

/** Keeps rendered pictures by digest, as Keyv does; what it loses is drawn again. */
export type PictureMemory = { get(key: string): Promise<unknown>; set(key: string, value: unknown): Promise<unknown> }

/** How many rendered pictures stay in the process; the shipped packs have a few dozen. */
const mostHere = 200

export function openQuestionPictures(memory: PictureMemory): Pictures {
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

  async function ofDrawing(name: string, drawing: Drawing, say: Say): Promise<ShownPicture> {
    const alt = joinAlt(describe(drawing), (code, values) => sayAltFact(say, code, values))
    return { name, png: await pngOf(drawing), alt }
  }

  return {
    ofDrawing,
    async forQuestion(_program, question, say): Promise<ShownPicture | undefined> {
      let drawing = drawn.get(question)
      if (drawing === undefined) {
        drawing = drawQuestion(question) ?? null
        drawn.set(question, drawing)
      }
      return drawing ? ofDrawing(`${question.id}.png`, drawing, say) : undefined
    },
  }
}

/**
 * Draws a question of a pack; undefined where its pack gives no picture or one that cannot be drawn. What a family looks like
 * is never merged in: it would give the expected answer away.
 */
export function drawQuestion(question: Question): Drawing | undefined {
  const { picture, answer } = question
  if (!picture) return undefined
  const base = { view: picture.view, ...(picture.pointAt && { pointAt: picture.pointAt }), ...picture.show }
  const read = (show: Readonly<Record<string, string | number | boolean>>): Partial<CellParameters> | undefined => {
    const result = readCellParameters({ ...base, ...show })
    return result.ok ? result.params : undefined
  }
  const shown = answer.kind === 'options' ? answer.options.filter(option => Object.keys(option.show).length > 0) : []
  if (answer.kind === 'options' && shown.length > 1)
    return drawOptions(
      answer.options.map(({ show, label }) => {
        const params = Object.keys(show).length > 0 ? read(show) : undefined
        return { label, ...(params && { show: params }) }
      }),
    )
  const params = read({})
  return params && drawCell(params)
}
