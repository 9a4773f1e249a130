// The page of a family that is printed, for everybody who may see it: the drawing, what is checked, and the caution.

import { drawnOf } from '../../families/drawn.ts'
import { independent } from '../../families/strength/references.ts'
import { sayDay } from '../../words/dates.ts'
import { saySheet } from '../../words/family-sheet-words.ts'
import { sayTitle } from '../../words/family-words.ts'
import { unmarked } from '../../words/plain.ts'
import type { Say } from '../../words/say.ts'
import { gallery, message, type ShownMessage, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { workingOn } from './working-on.ts'

/** Undefined where nothing of it is in force. */
export async function sheetOf(
  services: Services,
  say: Say,
  server: string,
  id: string,
): Promise<ShownMessage | undefined> {
  const work = await workingOn(services, server, id)
  if (!work?.inForce) return undefined
  const { facts, number, at } = work.inForce
  const [{ drawFacts }, { drawSheet }] = await Promise.all([
    import('../../pictures/from-packs/draw-facts.ts'),
    import('../../pictures/from-packs/draw-sheet.ts'),
  ])
  const references = independent(work.references.filter(one => one.state === 'accepted'))
  const sheet = drawSheet({
    title: unmarked(sayTitle(say, facts.identity)),
    about: [say('families.sheet.version', { number, references }), say('families.since', { since: sayDay(say, at) })],
    picture: drawFacts(say, facts.identity, drawnOf(facts)),
    parts: saySheet(say, services.families.base, facts),
    caution: [say('caution.line'), say('caution.full')],
  })
  const shown = await services.pictures.ofDrawing(`${id}.png`, sheet, say)
  const pictures = shown ? [shown] : []
  return message([text(say('families.sheet.here')), ...gallery(pictures), small(say('caution.line'))], pictures)
}
