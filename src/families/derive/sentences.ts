// The sentences a derived rule says where nobody wrote one: made of the labels its question has in each language.
import type { Pack } from '../../engine/pack/pack.ts'
import type { Facts, KnownFake, Told } from '../facts/facts-schema.ts'
import { toldIn } from '../facts/settle-facts.ts'
import { featureNames } from './feature-names.ts'

export const languages = ['en', 'de', 'es'] as const
export type Language = (typeof languages)[number]
export type Sentences = Readonly<Record<Language, string>>

/** A feature's name in a language: its own, or its question without the mark at the end. */
export function featureName(base: Pack, feature: string, language: string): string {
  const name = featureNames[feature]?.[language as Language] ?? featureNames[feature]?.en
  if (name) return name
  const asked = askedIn(base, feature, language)
  return asked.replace(/^¿|\?$/g, '').slice(0, 60)
}

const askedIn = (base: Pack, feature: string, language: string): string =>
  base.words[language]?.questions[feature]?.ask ?? base.questions.find(one => one.id === feature)?.ask ?? feature

/** What an option is called in a language. */
export function optionLabel(base: Pack, feature: string, option: string, language: string): string {
  const told = base.words[language]?.questions[feature]?.options[option]?.label
  if (told) return told
  const { answer } = base.questions.find(one => one.id === feature) ?? {}
  const own = answer?.kind === 'options' ? answer.options.find(one => one.id === option)?.label : undefined
  return own ?? option
}

const quoted: Readonly<Record<Language, (text: string) => string>> = {
  en: text => `“${text}”`,
  de: text => `„${text}“`,
  es: text => `«${text}»`,
}
const or: Sentences = { en: ' or ', de: ' oder ', es: ' o ' }

export const labels = (base: Pack, feature: string, options: readonly string[], language: Language): string =>
  options.map(option => quoted[language](optionLabel(base, feature, option, language))).join(or[language])

type Write = (language: Language) => string
export const inAll = (write: Write): Sentences => ({ en: write('en'), de: write('de'), es: write('es') })

/** What was written, in every language it has, cut to what a rule may say. */
export const written = (told: Told): Sentences => inAll(language => toldIn(told, language))

export function againstSentence(
  base: Pack,
  feature: string,
  made: readonly string[],
  options: readonly string[],
): Sentences {
  return inAll(language => {
    const name = featureName(base, feature, language)
    const is = labels(base, feature, options.slice(0, 3), language)
    if (made.length === 0)
      return {
        en: `${name}: ${is} speaks against it, as this server describes the model.`,
        de: `${name}: ${is} spricht dagegen, so wie dieser Server das Modell beschreibt.`,
        es: `${name}: ${is} habla en contra, según describe este servidor el modelo.`,
      }[language]
    const as = labels(base, feature, made, language)
    return {
      en: `${name}: this model is made with ${as}, as this server describes it.`,
      de: `${name}: Dieses Modell ist mit ${as} gemacht, so wie dieser Server es beschreibt.`,
      es: `${name}: este modelo se hace con ${as}, según lo describe este servidor.`,
    }[language]
  })
}

export function remarkSentence(base: Pack, feature: string, options: readonly string[]): Sentences {
  return inAll(language => {
    const name = featureName(base, feature, language)
    const is = labels(base, feature, options.slice(0, 4), language)
    return {
      en: `${name}: ${is} tells nothing about this model.`,
      de: `${name}: ${is} sagt bei diesem Modell nichts aus.`,
      es: `${name}: ${is} no dice nada en este modelo.`,
    }[language]
  })
}

export function exceptionSentence(base: Pack, feature: string, unless: 'open-rewrap' | 'protected'): Sentences {
  return inAll(language => {
    const name = featureName(base, feature, language)
    const rewrap = unless === 'open-rewrap'
    return {
      en: `${name}: not held against a cell that was openly sold ${rewrap ? 'in another wrap' : 'with a protection circuit'}. It proves nothing either.`,
      de: `${name}: zählt nicht gegen eine Zelle, die offen ${rewrap ? 'mit anderer Hülle' : 'mit Schutzschaltung'} verkauft wurde. Es beweist aber auch nichts.`,
      es: `${name}: no cuenta contra una celda vendida abiertamente ${rewrap ? 'con otra funda' : 'con circuito de protección'}. Tampoco demuestra nada.`,
    }[language]
  })
}

export const fakeSentence = ({ says, since }: KnownFake): Sentences =>
  inAll(language => {
    const own = toldIn(says, language)
    return {
      en: `${own} Seen here since ${since}.`,
      de: `${own} Hier gesehen seit ${since}.`,
      es: `${own} Visto aquí desde ${since}.`,
    }[language]
  })

export type FigureSentence =
  | { readonly is: 'capacity-above'; readonly typical: number }
  | { readonly is: 'capacity-below'; readonly least: number }
  | { readonly is: 'current-above'; readonly amps: number; readonly cutOff: boolean }
  | { readonly is: 'mass'; readonly middle: number; readonly far: boolean }
  | { readonly is: 'size'; readonly diameter: number; readonly length: number }
  | { readonly is: 'resistance'; readonly usual: number }

const formats = new Map<Language, Intl.NumberFormat>()

/** A figure as the language writes it. */
export function number(language: Language, value: number): string {
  const format =
    formats.get(language) ?? new Intl.NumberFormat(language, { maximumFractionDigits: 1, useGrouping: 'min2' })
  formats.set(language, format)
  return format.format(value)
}

export function figureSentence(figure: FigureSentence): Sentences {
  return inAll(language => {
    const n = (value: number) => number(language, value)
    switch (figure.is) {
      case 'capacity-above':
        return {
          en: `It is sold with ${n(figure.typical)} mAh. With a clearly higher figure on it, it is not this model.`,
          de: `Sie wird mit ${n(figure.typical)} mAh verkauft. Mit einer deutlich höheren Angabe ist sie nicht dieses Modell.`,
          es: `Se vende con ${n(figure.typical)} mAh. Con una cifra claramente mayor no es este modelo.`,
        }[language]
      case 'capacity-below':
        return {
          en: `The figure on it is below the ${n(figure.least)} mAh that this model has at least.`,
          de: `Die Angabe darauf liegt unter den ${n(figure.least)} mAh, die dieses Modell mindestens hat.`,
          es: `La cifra que lleva está por debajo de los ${n(figure.least)} mAh que este modelo tiene como mínimo.`,
        }[language]
      case 'current-above':
        return figure.cutOff
          ? {
              en: `More than ${n(figure.amps)} A holds only with a limit of temperature for this model.`,
              de: `Mehr als ${n(figure.amps)} A gelten bei diesem Modell nur mit einer Temperaturgrenze.`,
              es: `En este modelo, más de ${n(figure.amps)} A solo vale con un límite de temperatura.`,
            }[language]
          : {
              en: `This model is given ${n(figure.amps)} A at most as a continuous current.`,
              de: `Für dieses Modell sind höchstens ${n(figure.amps)} A Dauerstrom angegeben.`,
              es: `Para este modelo se dan como mucho ${n(figure.amps)} A en descarga continua.`,
            }[language]
      case 'mass':
        return {
          en: `This model weighs about ${n(figure.middle)} g; this one is ${figure.far ? 'far' : 'somewhat'} off that.`,
          de: `Dieses Modell wiegt etwa ${n(figure.middle)} g; diese Zelle liegt ${figure.far ? 'weit' : 'etwas'} daneben.`,
          es: `Este modelo pesa unos ${n(figure.middle)} g; esta celda se aparta ${figure.far ? 'mucho' : 'algo'} de eso.`,
        }[language]
      case 'size':
        return {
          en: `This model is ${n(figure.diameter)} × ${n(figure.length)} mm; this one is another size.`,
          de: `Dieses Modell misst ${n(figure.diameter)} × ${n(figure.length)} mm; diese Zelle ist anders groß.`,
          es: `Este modelo mide ${n(figure.diameter)} × ${n(figure.length)} mm; esta celda tiene otro tamaño.`,
        }[language]
      case 'resistance':
        return {
          en: `New ones of this model have about ${n(figure.usual)} mΩ; this one has more than twice as much.`,
          de: `Neue Zellen dieses Modells haben etwa ${n(figure.usual)} mΩ; diese hat mehr als doppelt so viel.`,
          es: `Las nuevas de este modelo tienen unos ${n(figure.usual)} mΩ; esta tiene más del doble.`,
        }[language]
    }
  })
}

/** One line of what is known of how it is made, in each language. */
export function aboutSentence(base: Pack, facts: Facts): Sentences {
  return inAll(language => {
    const known = Object.entries(facts.traits).filter(([, trait]) => trait.made.length > 0)
    const parts = known.map(([feature, { made }]) => {
      const labels = made.map(option => optionLabel(base, feature, option, language)).join(or[language])
      return `${featureName(base, feature, language)}: ${labels}`
    })
    const none = {
      en: 'Nothing is known of how it is made.',
      de: 'Wie sie gemacht ist, ist nicht bekannt.',
      es: 'No se sabe cómo está hecha.',
    }
    return cut(parts.length > 0 ? `${parts.join(' · ')}.` : none[language], 300)
  })
}

const cut = (text: string, most: number): string => (text.length <= most ? text : `${text.slice(0, most - 1)}…`)
