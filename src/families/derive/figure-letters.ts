// What a letter to a seller says of a figure that does not fit: the model's own figure, as its server describes it.
import { type FigureSentence, inAll, number, type Sentences } from './sentences.ts'

export function figureLetter(figure: FigureSentence): Sentences {
  return inAll(language => {
    const n = (value: number) => number(language, value)
    switch (figure.is) {
      case 'capacity-above':
        return {
          en: `This model is sold with ${n(figure.typical)} mAh.`,
          de: `Dieses Modell wird mit ${n(figure.typical)} mAh verkauft.`,
          es: `Este modelo se vende con ${n(figure.typical)} mAh.`,
        }[language]
      case 'capacity-below':
        return {
          en: `This model has ${n(figure.least)} mAh at least.`,
          de: `Dieses Modell hat mindestens ${n(figure.least)} mAh.`,
          es: `Este modelo tiene ${n(figure.least)} mAh como mínimo.`,
        }[language]
      case 'current-above':
        return {
          en: `This model is given ${n(figure.amps)} A at most as a continuous current.`,
          de: `Für dieses Modell sind höchstens ${n(figure.amps)} A Dauerstrom angegeben.`,
          es: `Para este modelo se dan como mucho ${n(figure.amps)} A de corriente continua.`,
        }[language]
      case 'mass':
        return {
          en: `This model weighs about ${n(figure.middle)} g.`,
          de: `Dieses Modell wiegt etwa ${n(figure.middle)} g.`,
          es: `Este modelo pesa unos ${n(figure.middle)} g.`,
        }[language]
      case 'size':
        return {
          en: `This model is ${n(figure.diameter)} × ${n(figure.length)} mm.`,
          de: `Dieses Modell misst ${n(figure.diameter)} × ${n(figure.length)} mm.`,
          es: `Este modelo mide ${n(figure.diameter)} × ${n(figure.length)} mm.`,
        }[language]
      case 'resistance':
        return {
          en: `New cells of this model have about ${n(figure.usual)} mΩ.`,
          de: `Neue Zellen dieses Modells haben etwa ${n(figure.usual)} mΩ.`,
          es: `Las celdas nuevas de este modelo tienen unos ${n(figure.usual)} mΩ.`,
        }[language]
    }
  })
}
