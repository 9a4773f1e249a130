// The words of safety: in one place alone, the three states told apart, nobody asked to handle what may burn, and put into texts by name.
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { german } from '../../src/words/de/german.ts'
import { english } from '../../src/words/en/english.ts'
import { safety } from '../../src/words/en/safety.ts'
import { spanish } from '../../src/words/es/spanish.ts'
import { inSafetyWords, safetyKeys } from '../../src/words/safety-words.ts'
import { languages, sayIn } from '../../src/words/say.ts'

type SafetyKey = keyof typeof safety
const keys = safetyKeys as readonly SafetyKey[]

const answers = new URL('../../rules/answers', import.meta.url).pathname

/** What stands in each entry in a language, by its file; that of an emergency begins with the word. */
const bodiesIn = (language: string): (readonly [file: string, body: string])[] =>
  readdirSync(answers)
    .filter(one => one.endsWith('.md'))
    .map(file => {
      const text = readFileSync(`${answers}/${file}`, 'utf8')
      const body = text.split(new RegExp(`^# ${language}$`, 'm'))[1]?.split(/^# /m)[0] ?? ''
      return [file, /^caution: emergency$/m.test(text) ? `emergency ${body}` : body]
    })

/** What stands above the texts of an entry. */
const frontOf = (file: string): string => readFileSync(`${answers}/${file}`, 'utf8').split(/^---$/m)[1] ?? ''

const words = {
  en: {
    call: /call your emergency number/i,
    away: /get away/i,
    hands: /\b(wear|cover both ends|put it(?! (?:and its device )?down))\b/i,
    if: /^Only if/,
    letGo: /the cell if you are holding it/,
    release: /let go of it/,
    worn: /do not reach for it: take off the clothes/,
    leave: /Leave all of it there, do not touch it, .*never use or charge the cell/,
    unplug: /unplug/,
    emergency: /or does not seem to cool: get away and call/,
    ask: /before you move it/,
    only: /Only if it is cold/,
    still: /^Only if it is still cold and quiet:/,
    tape: /electrical tape/,
  },
  de: {
    call: /wähl den Notruf/i,
    away: /geh (jetzt )?weg/i,
    hands: /\b(Trag Handschuhe|Kleb|leg sie(?! (?:und ihr Gerät )?hin))\b/i,
    if: /^Nur wenn/,
    letGo: /die Zelle fallen, wenn du sie hältst/i,
    release: /Lass sie los/,
    worn: /greif nicht nach ihr: Zieh die Kleidung aus/,
    leave: /Lass alles dort, fass es nicht mehr an, .*benutze und lade die Zelle nie wieder/,
    unplug: /Stecker/,
    emergency: /scheint sie nicht abzukühlen: Geh weg und wähl den Notruf/,
    ask: /bevor du sie bewegst/,
    only: /Nur wenn sie kalt/,
    still: /^Nur wenn sie noch kalt und ruhig ist:/,
    tape: /Isolierband/,
  },
  es: {
    call: /llama al número de emergencias/i,
    away: /aléjate/i,
    hands: /(usa guantes|tapa los|ponla)/i,
    if: /^Solo si/,
    letGo: /la celda si la tienes en la mano/,
    release: /suéltala/,
    worn: /no metas la mano: quítate la prenda/,
    leave: /Déjalo todo ahí y no lo toques más, .*no uses ni cargues la celda nunca más/,
    unplug: /desenchufa/,
    emergency: /o no parece enfriarse: aléjate y llama/,
    ask: /Antes de moverla, pregunta/,
    only: /Solo si está fría/,
    still: /^Solo si sigue fría y tranquila:/,
    tape: /cinta aislante/,
  },
} as const

test('nothing else in the catalogue tells anybody to call for help in words of its own', () => {
  const own = Object.entries(english).filter(
    ([key, said]) => /call (your|the) emergency|get away from/i.test(said) && !key.startsWith('safety.'),
  )
  const borrowed = own.filter(([, said]) => keys.some(key => said.includes(safety[key])))
  expect(own.map(([key]) => key)).toEqual(borrowed.map(([key]) => key))
})

describe.each([
  ['en', english, /emergency number|electrical tape|24 hours|25 m\b|(?:60|45) °C|cannot burn/i],
  ['de', german, /Notruf|Isolierband|24 Stunden|25 m\b|(?:60|45) °C|nicht brennen kann/i],
  ['es', spanish, /número de emergencias|cinta aislante|24 horas|25 m\b|(?:60|45) °C|no pued[ae] arder/i],
] as const)('in %s', (language, catalogue, acts) => {
  test('whom to call, what to cover, how long, how far and how hot stand in one place, which others name', () => {
    const say = sayIn(language)
    const source = keys.map(key => say(key)).sort((a, b) => b.length - a.length)
    const own = Object.entries(catalogue).flatMap(([key, said]) => {
      const left = source.reduce((text, one) => text.replaceAll(one, ''), said)
      // What an authority of a country says stands there as it says it; a report comes after the call.
      const others = /^(safety|region)\.|^buying\.report\.text$/.test(key)
      return others || !acts.test(left) ? [] : [`${key}: ${left}`]
    })
    expect(own).toEqual([])
  })
})

describe.each(Object.entries(words))('in %s', (language, is) => {
  const say = sayIn(language)

  test('whoever reads one sentence reads both: get away, and call', () => {
    for (const key of ['safety.now', 'safety.turns'] as const) {
      expect(say(key), key).toMatch(is.away)
      expect(say(key), key).toMatch(is.call)
    }
  })

  test('hands are asked for only where the cell is quiet, or where somebody who knows says so, and the condition comes first', () => {
    const handling = keys.filter(key => is.hands.test(say(key)))
    expect(handling).toEqual(['safety.cold.carry', 'safety.quiet.keep'])
    for (const key of handling) expect(say(key), key).toMatch(is.if)
    // In full where nothing was named before: every sign there is.
    expect(say('safety.quiet.keep')).toContain(say('safety.quiet.only'))
    // Before the first question that needs hands each point is gone through; after that, what may have changed since.
    expect(say('consent.touch.text')).toContain(say('safety.quiet.touch'))
    for (const key of ['care.handle', 'care.meter'] as const) expect(say(key), key).toMatch(is.still)
  })

  test('what needs hands on a cell in doubt stands in one entry of the answers, with its condition before it; others lead there', () => {
    const bodies = bodiesIn(language)
    // A cell that is whole and not suspect has its ends covered before it travels or is handed in.
    const taping = bodies.flatMap(([file, body]) => (is.tape.test(body) ? [file] : []))
    expect(taping).toEqual(['carrying-and-flying.md', 'disposal.md', 'keep-until-handed-in.md'])
    const keep = bodies.find(([file]) => file === 'keep-until-handed-in.md')?.[1] ?? ''
    const order = [keep.indexOf('{safety.now.ask}'), keep.indexOf('{safety.quiet.touch}'), keep.search(is.tape)]
    expect(Math.min(...order)).toBeGreaterThan(-1)
    expect(order).toEqual(order.toSorted((a, b) => a - b))
    const leading = bodies.filter(([, body]) => body.includes('{safety.quiet.until}'))
    expect(leading.length).toBeGreaterThan(12)
    const title = new RegExp(`^  ${language}: (.*)$`, 'm').exec(frontOf('keep-until-handed-in.md'))?.[1] ?? 'none'
    expect(say('safety.quiet.until')).toContain(title.replace(/^'|'$/g, ''))
    for (const [file] of leading) expect(frontOf(file), file).toMatch(/^related: \[keep-until-handed-in\b/m)
  })

  test('whoever holds or wears the cell is told to let go of it before whom to call, in the very order to act', () => {
    for (const [key, letGo] of [
      ['safety.now', is.letGo],
      ['safety.turns', is.release],
    ] as const) {
      const order = [letGo, is.call].map(act => say(key).search(act))
      expect(order[0], key).toBeGreaterThan(0)
      expect(order[1], key).toBeGreaterThan(order[0] ?? 0)
    }
    expect(say('safety.now.worn')).toMatch(is.worn)
  })

  test('in every entry of the answers letting go of it comes first, then getting everybody out, then the numbers', () => {
    const order = ['worn', 'far', 'call', 'carry', 'gone-quiet']
    let seen = 0
    for (const [file, body] of bodiesIn(language)) {
      const named = [...body.matchAll(/\{safety\.now\.([a-z-]+)\}/g)].map(([, key]) => key ?? '')
      const acts = named.filter(key => order.includes(key))
      expect(acts, file).toEqual(acts.toSorted((a, b) => order.indexOf(a) - order.indexOf(b)))
      // Above an emergency the answer itself says it, before the body: tests/discord/answer-message.test.ts.
      if (acts.length > 0 && !body.startsWith('emergency')) expect(acts[0], file).toBe('worn')
      seen += acts.length
    }
    expect(seen).toBeGreaterThan(15)
  })

  test('what got hot and cools is left alone like all that got hot: no plug is pulled beside it', () => {
    const said = say('safety.cooling')
    expect(said).toMatch(is.leave)
    expect(said).not.toMatch(is.unplug)
    expect(said).toMatch(is.emergency)
  })

  test('in each region somebody is asked before a suspect cell is moved, and tape has its condition first', () => {
    for (const region of ['us', 'uk', 'eu', 'ca', 'au', 'other'] as const) {
      const said = say(`region.${region}.text`)
      const order = [is.ask, is.only, is.tape].map(act => said.search(act))
      expect(Math.min(...order), region).toBeGreaterThan(0)
      expect(order, region).toEqual(order.toSorted((a, b) => a - b))
    }
  })

  test('the signs of the three states are three different sentences', () => {
    const signs = (['safety.now.sign', 'safety.cold.sign', 'safety.quiet.sign'] as const).map(key => say(key))
    expect(new Set(signs).size).toBe(3)
  })
})

test('a name in a text becomes what is said in its language; one that there is nothing for stays and is listed', () => {
  for (const language of languages as readonly ('en' | 'de' | 'es')[])
    expect(inSafetyWords('- {safety.quiet} x', language)).toEqual({
      text: `- ${sayIn(language)('safety.quiet')} x`,
      unknown: [],
    })
  expect(inSafetyWords('{safety.quite} {constructor}', 'en')).toEqual({
    text: '{safety.quite} {constructor}',
    unknown: ['safety.quite', 'constructor'],
  })
})
