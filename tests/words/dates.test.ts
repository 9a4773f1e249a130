// Days and weeks have one form a language, written in one place; a week can be found in a chart by its number.
import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { sayDay, sayWeek, sayWeekNumber } from '../../src/words/dates.ts'
import { languages, sayIn } from '../../src/words/say.ts'

// What lies between a number and a dash is a thin space in some languages.
const seen = (said: string) => said.replace(/\s+/g, ' ')
const day = Date.UTC(2026, 10, 29, 23, 59)

describe('in each language', () => {
  const expected = {
    'en-GB': ['29 Nov 2026', '23 – 29 Nov 2026 (W48)', '28 Dec 2026 – 3 Jan 2027 (W53)'],
    de: ['29.11.2026', '23.–29.11.2026 (W48)', '28.12.2026 – 03.01.2027 (W53)'],
    'es-ES': ['29 nov 2026', '23–29 nov 2026 (W48)', '28 dic 2026 – 3 ene 2027 (W53)'],
  }
  test.each(Object.entries(expected))('%s', (locale, [one, week, turn]) => {
    const say = sayIn(locale)
    expect(seen(sayDay(say, day))).toBe(one)
    expect(seen(sayWeek(say, '2026-W48'))).toBe(week)
    // A week that belongs to two years says both.
    expect(seen(sayWeek(say, '2026-W53'))).toBe(turn)
  })

  test('no week reads as another, and each bears the number that charts name it by', () => {
    for (const language of languages) {
      const weeks = Array.from({ length: 52 }, (_, i) => `2026-W${String(i + 1).padStart(2, '0')}`)
      const said = weeks.map(week => sayWeek(sayIn(language), week))
      expect(new Set(said).size).toBe(52)
      for (const [i, week] of weeks.entries()) expect(said[i]).toContain(`(${sayWeekNumber(week)})`)
    }
  })
})

test('nobody writes a day by other means', async () => {
  const files = (await readdir('src', { recursive: true })).filter(one => one.endsWith('.ts'))
  const writing = []
  // The stand-in of Discord writes days as Discord does.
  for (const file of files.filter(one => !one.startsWith('practice')))
    if (/DateTimeFormat|toLocale(Date|Time)?String|<t:[^>]*:[dD]>/.test(await readFile(join('src', file), 'utf8')))
      writing.push(file)
  expect(writing.sort()).toEqual(['words/describe.ts', 'words/formatters.ts'])
})
