// How people say, in haste and with slips, that somebody is hurt: words of which two together tell it, in each language, and what sounds like it.
import type { Language } from '../entry.ts'

export type HurtWords = {
  /** What is written in several words, and the one it is taken for; in order. */
  readonly together: readonly (readonly [RegExp, string])[]
  /** A word of both lists tells that somebody is hurt. Without accents; a slip of the hand is read as what it is nearest to. */
  readonly pairs: readonly (readonly [string, string])[]
  /** Words that tell it alone where a cell is named, or what holds or charges one. */
  readonly withCells: string
  /** Words that look like a slip of one of ours, and are none. */
  readonly noSlips: string
  /** Where this stands, nobody was hurt by a cell: the sun, sport, food for thought. */
  readonly never: RegExp
}

const bangs = {
  en: 'explode explodes exploded exploding explosion burst bursts bursted popped bang banged vented wentoff',
  de: 'explodiert explodierte explodieren explosion geplatzt platzte zerplatzt hochgegangen geknallt knallte indieluft losgegangen',
  es: 'exploto explota explotado explotara explosion reviento revento rebento reventado reventar estallo estalla estallado porlosaires',
}
const burns = {
  en: 'burn burns burned burnt burning blister blisters blistered scorched singed',
  de: 'verbrannt verbrennt verbrennung verbrennungen verbrannte brandblase brandblasen brandwunde angesengt gebrannt brannte',
  es: 'quemo queme quemado quemada quemados quemadas quemadura quemaduras ampolla ampollas chamuscado prendio ardio',
}
const body = {
  en: 'hand hands palm leg legs arm arms finger fingers thumb face skin thigh foot feet chest belly neck lips mouth lap eye eyes',
  de: 'hand hande handflache bein beine arm arme finger daumen gesicht haut oberschenkel schenkel fuss fusse brust hals mund lippen auge augen',
  es: 'mano manos palma pierna piernas brazo brazos dedo dedos cara piel muslo pie pies pecho cuello boca labios ojo ojos',
}
const clothes = {
  en: 'pocket pockets trousers pants jeans',
  de: 'hosentasche hose jackentasche jacke',
  es: 'bolsillo bolsillos pantalon pantalones vaqueros',
}
const pockets = { en: 'pocket pockets', de: 'hosentasche jackentasche', es: 'bolsillo bolsillos' }
const harmed = {
  en: 'hurt hurts bleeding bleeds injured injury wounded painful',
  de: 'verletzt verletzung blutet blutend weh schmerzen',
  es: 'herido herida heridos sangra sangrando sangre duele lesionado',
}
const smoke = {
  en: 'smoke fumes vapour vapor cloud',
  de: 'rauch qualm dampf dampfe wolke nebel',
  es: 'humo vapor gases nube humareda',
}
const breath = {
  en: 'breathe breathed breathing inhaled inhale cough coughing coughs coughed lungs choking dizzy',
  de: 'eingeatmet atmen atmet luft hustet husten huste gehustet schwindlig schwindelig lunge',
  es: 'respiro respire respirar inhale inhalo tose toso tosiendo tos mareado mareada pulmones',
}
const taken = {
  en: 'swallowed swallow ate licked sucked drank',
  de: 'geschluckt verschluckt gegessen getrunken geleckt abgeleckt',
  es: 'trago tragado chupo chupado lamio bebio mordio',
}
const swallowed = { en: 'swallowed swallow', de: 'verschluckt geschluckt', es: 'trago tragado tragada' }
const stuff = {
  en: 'liquid fluid powder acid goo gel electrolyte',
  de: 'flussigkeit zeug pulver saure gel elektrolyt dran',
  es: 'liquido polvo acido electrolito algo',
}
const ooze = { en: 'goo electrolyte', de: 'zeug elektrolyt', es: 'electrolito' }
const squirted = { en: 'squirted sprayed splashed', de: 'gespritzt spritzte spritzer', es: 'salpico salpicado' }
const soft = { en: 'eye eyes face mouth', de: 'auge augen gesicht mund haut', es: 'ojo ojos cara boca' }

const wounds = { en: 'burns', de: 'verbrennung verbrennungen brandblasen', es: 'quemadura quemaduras' }
const people = {
  en: 'kid child son daughter toddler brother sister husband wife friend doctor ambulance hospital',
  de: 'kind sohn tochter bruder schwester mann frau freund arzt notarzt krankenhaus',
  es: 'hijo hija nino nina hermano hermana marido mujer amigo medico ambulancia hospital',
}

const pairsOf = (language: Language): HurtWords['pairs'] => [
  [burns[language], body[language]],
  [burns[language], clothes[language]],
  [bangs[language], body[language]],
  [bangs[language], pockets[language]],
  [bangs[language], harmed[language]],
  [smoke[language], breath[language]],
  [taken[language], stuff[language]],
  [squirted[language], soft[language]],
  [ooze[language], body[language]],
  [wounds[language], people[language]],
]

export const hurtWords: Readonly<Record<Language, HurtWords>> = {
  en: {
    together: [
      [/\b(?:went|goes|go|gone|going) (?:off|bang|boom|pop)\b|\b(?:blew|blow|blown|blowing) up\b/g, ' wentoff '],
      [/\bin (?:my|his|her|the|their) eyes?\b/g, ' splashed eye '],
      [/\b(?:in (?:his|her|their) mouth|put (?:it|one) in (?:his|her|their) mouth)\b/g, ' swallowed '],
      [/\b(inhaled|swallowed|breathed) (?:some (?:of )?)?(?:it|that|this)\b/g, ' $1 smoke liquid '],
      // How hot a thing is, and no burn.
      [/\b(?:burning|scorching|blistering) hot\b/g, ' hot '],
      [/\bcaught (?:on )?(?:fire|light)\b|\bon fire\b|\bin flames\b/g, ' burned '],
    ],
    pairs: pairsOf('en'),
    withCells: swallowed.en,
    noSlips: 'burner burners beast boost hang bank hurry hotel fare race faces lags aim farm inhaler breath',
    never:
      /\b(?:sun ?burn\w*|calories|burn\w* (?:the )?fat|fat burn\w*|heart ?burn|squats|(?:after|from|while|by) (?:the |a )?(?:gym|workouts?|training|exercis\w*|running|jogging)|(?:burn\w*|rip\w*) (?:a )?cds?|razor|botox|(?:quit|stop|give up|giving up) smoking|allerg(?:y|ies)|pollen|hay fever|onions?|chill?i(?:es|s)?|frost\w*|shav(?:e|ed|ing)|pipes? burst|microwave|candles?|(?<!like )(?<!like a )fireworks?|sun ?(?:screen|cream|block)|shampoo|conditioner|(?:hair )?dye|chlorine|moisturi[sz]er|mascara|eye ?liner|eyelash\w*|make ?up|hair ?spray|lemons?|limes?|contact lens\w*|grapefruit|sauce|(?:chemical|face) peel\w*|waxing|wildfires?|forest fires?|dentist)\b/,
  },
  de: {
    together: [
      [
        /(?<!\p{L})(?:in|durch) die luft (?:ge\p{L}+|flog)|(?<!\p{L})(?:flog|fliegt) (?:\p{L}+ )?in die luft/gu,
        ' indieluft ',
      ],
      [/(?<!\p{L})(?:fing|ging|stand|steht) (?:\p{L}+ )?(?:feuer|in flammen|hoch)/gu, ' verbrannt '],
      [/(?<!\p{L})(?:ins auge|in (?:die|den) augen|in die auge)(?!\p{L})/gu, ' gespritzt auge '],
      [/(?<!\p{L})im mund gehabt|in den mund genommen/gu, ' dran geleckt '],
    ],
    pairs: pairsOf('de'),
    withCells: swallowed.de,
    noSlips: 'scherben gelassen gelesen gekannt genannt verkannt gerannt verbannt hase dose rose rausch lust fluss',
    never:
      /(?<!\p{L})(?:sonnenbrand|kalorien|fett (?:ver)?brenn\p{L}*|sodbrennen|(?:beim|nach dem|vom) (?:training|sport|joggen|laufen)|muskelkater|botox|(?:mit dem )?rauchen (?:aufhor\p{L}*|aufgeben)|aufhoren zu rauchen|nichtraucher|wasserrohr|vor (?:wut|arbeit)|allergien?|pollen|heuschnupfen|zwiebeln?|chilis?|rasur|rasieren|\p{L}*kerzen?|(?<!wie )(?<!wie eine )(?:silvester)?raketen?|\p{L}*boller|feuerwerk\p{L}*|(?:sonnen|gesichts|nacht)(?:creme|milch)|milch|shampoo|spulung|\p{L}*farbemittel|haarfarbe|chlor\p{L}*|wimper\p{L}*|haarspray|schminke|zitronen?|limetten?|kontaktlinsen?|\p{L}*(?:sosse|sauce)|peeling|waxing|waldbrand\p{L}*|zahnarzt)(?!\p{L})/u,
  },
  es: {
    together: [
      // What burns somebody, and not what is only hot.
      [/(?<!\p{L})(?:me|le|se le|se me|nos|te) (?:esta |estaba )?quem(?:a|aba|ando)(?!\p{L})/gu, ' quemo '],
      [/(?<!\p{L})en (?:el|los|mi|su|un) ojos?(?!\p{L})/gu, ' salpico ojo '],
      [/(?<!\p{L})por los aires(?!\p{L})/gu, ' porlosaires '],
      [/(?<!\p{L})(?:se prendio fuego|en llamas)(?!\p{L})/gu, ' quemado '],
    ],
    pairs: pairsOf('es'),
    withCells: swallowed.es,
    noSlips:
      'quemando quemaba quemaban quemante quedo quede queda quedado quedada quedados quedadas quiero quemador revista mango manto pierda piedra piel cada casa cama',
    never:
      /(?<!\p{L})(?:quemaduras? (?:de|del) sol|quemaduras? solar\p{L}*|calorias|quem\p{L}* grasa|(?:despues del|en el) (?:gimnasio|entrenamiento)|(?:al|de) correr|quem\p{L}* (?:un )?cds?|(?:dejar|dejo|deje) de fumar|botox|hialuronico|tuberia|explota\p{L}* la cabeza|alergias?|polen|cebollas?|bombillas?|afeitar\p{L}*|velas?|(?<!como )(?<!como un )(?:petardos?|cohetes?)|fuegos artificiales|crema (?:solar|facial|depilatoria)|protector solar|bronceador|champu|acondicionador|tintes?|cloro|rimel|pestanas?|maquillaje|laca|limon(?:es)?|limas?|lentillas?|salsa|exfolia\p{L}*|depila\p{L}*|incendios? forestal(?:es)?|dentista)(?!\p{L})/u,
  },
}
