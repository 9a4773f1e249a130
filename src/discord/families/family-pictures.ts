// The drawings of families: a family by its facts, the ways of building side by side, a feature's options.
import type { Pack } from '../../engine/pack/pack.ts'
import { drawnOf, firstDrawnOf, orElse } from '../../families/drawn.ts'
import type { Construction, Facts } from '../../families/facts/facts-schema.ts'
import type { ShownPicture } from '../../services/pictures/shown-picture.ts'
import { sayLooks, sayMade } from '../../words/family-facts-words.ts'
import { sayFeature } from '../../words/family-words.ts'
import type { Say } from '../../words/say.ts'
import type { Services } from '../services.ts'
import { fitting } from './show/menus.ts'

type Drawing = typeof import('../../pictures/from-packs/draw-facts.ts')
/** The drawings are loaded when the first is asked for. */
const drawings = (): Promise<Drawing> => import('../../pictures/from-packs/draw-facts.ts')

/** Large for whoever looks at a model. */
export const picturesOf = (services: Services, say: Say, facts: Facts): Promise<ShownPicture[]> =>
  pictured(services, say, facts, false)

/** Small for whoever reads the lines and has to press below them. */
export const picturesBeside = (services: Services, say: Say, facts: Facts): Promise<ShownPicture[]> =>
  pictured(services, say, facts, true)

async function pictured(services: Services, say: Say, facts: Facts, row: boolean): Promise<ShownPicture[]> {
  const drawing = (await drawings()).drawFacts(say, facts.identity, drawnOf(facts), row)
  const shown = drawing && (await services.pictures.ofDrawing('family.png', drawing, say))
  return shown ? [shown] : []
}

const inColumns = (of: (feature: string) => string) =>
  [of('legs'), of('vent-disc'), of('lettering-place'), of('code-place')] as const

export async function picturesToChoose(
  services: Services,
  say: Say,
  base: Pack,
  constructions: readonly Construction[],
  facts: Facts,
): Promise<ShownPicture[]> {
  const fit = fitting(constructions, facts).map(one => ({
    show: firstDrawnOf({ ...one, identity: facts.identity }),
    label: sayMade(say, base, one),
    or: inColumns(feature => {
      const looks = orElse(one, feature)
      return looks.length > 0 ? say('families.built.or', { others: sayLooks(say, base, feature, looks) }) : ''
    }),
  }))
  if (fit.length === 0) return []
  const heads = inColumns(feature => sayFeature(say, base, feature))
  const shown = await services.pictures.ofDrawing('ways.png', (await drawings()).drawBuilt(fit, heads), say)
  return shown ? [shown] : []
}

export async function pictureOfFeature(
  services: Services,
  say: Say,
  base: Pack,
  feature: string,
): Promise<ShownPicture[]> {
  const question = base.questions.find(one => one.id === feature)
  const shown = question && (await services.pictures.forQuestion(question, say))
  return shown ? [shown] : []
}
