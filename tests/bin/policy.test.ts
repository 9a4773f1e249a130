// The page to link as privacy policy and terms: everything /privacy says of what is kept, in each language, and nothing of a contact runs.
import { execFile } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { expect, test } from 'vitest'
import { english } from '../../src/words/en/english.ts'
import { languages, sayIn } from '../../src/words/say.ts'

const entry = fileURLToPath(new URL('../../src/bin/cellwary.ts', import.meta.url))
const run = (...words: string[]) => promisify(execFile)(process.execPath, [entry, 'policy', ...words])
/** Only on buttons, or said of what has just been done. */
const ofButtons =
  /\.(show|shown|delete|deleted|yes|no|in|out|help-out|help-in)$|^privacy\.(sure\.title|page\.everybody)$/

test.each(languages)('says all that /privacy says, and the whole caution: %s', async language => {
  const say = sayIn(language)
  const { stdout } = await run('--contact', 'Somebody, <b>here</b>', '--language', language)
  const page = stdout.replaceAll('&quot;', '"').replaceAll('&amp;', '&')
  const kept = Object.keys(english).filter(key => key.startsWith('privacy.') && !ofButtons.test(key))
  expect(kept.length).toBeGreaterThan(15)
  for (const key of [...kept, 'caution.full'] as (keyof typeof english)[]) expect(page).toContain(say(key))
  expect(page).toContain('Somebody, &lt;b>here&lt;/b>'.replaceAll('>', '&gt;'))
  expect(page).toContain(`<html lang="${language}">`)
})

test('without a contact, or in what is no language, it says what to give', async () => {
  await expect(run()).rejects.toMatchObject({ code: 2, stderr: expect.stringContaining('--contact') })
  await expect(run('--contact', 'me', '--language', 'x y')).rejects.toMatchObject({
    code: 1,
    stderr: expect.stringContaining('no language'),
  })
})
