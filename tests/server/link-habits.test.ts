// What addresses carry beside where they lead: shorteners and invitations are refused, what says who sent somebody is left out.
import { expect, test } from 'vitest'
import { pageOf } from '../../src/server/link-habits.ts'
import { readAddress } from '../../src/server/links.ts'

const codeOf = (typed: string): string => {
  const read = readAddress(typed)
  return read.ok ? 'ok' : read.refusal.code
}

test.each([
  ['https://bit.ly/3xYz', 'link-short'],
  ['https://www.tinyurl.com/cells', 'link-short'],
  ['https://bit.ly.example/3xYz', 'ok'],
  ['https://bwww.it.ly/3xYz', 'ok'],
  ['https://discord.gg/abc', 'link-invite'],
  ['https://discord.com/invite/abc', 'link-invite'],
  ['https://ptb.discord.com/oauth2/authorize?client_id=1', 'link-invite'],
  ['https://discord.com/safety', 'ok'],
  ['https://t.me/somebody', 'link-invite'],
  ['https://format.me/cells', 'ok'],
  ['https://shop.example/c?utm_source=https://elsewhere.example', 'ok'],
])('%j: %s', (typed, code) => {
  expect(codeOf(typed)).toBe(code)
})

test.each([
  ['https://shop.example/c?size=18650&utm_source=x&fbclid=y&UTM_Medium=z', 'https://shop.example/c?size=18650'],
  ['https://shop.example/c?aff_id=7', 'https://shop.example/c'],
  ['https://shop.example/c?size=18650&utm_source=x&tag=a%20b', 'https://shop.example/c?size=18650&tag=a%20b'],
  ['https://shop.example/c?utm_source=x#drawing', 'https://shop.example/c#drawing'],
])('%j keeps only where it leads', (typed, url) => {
  const read = readAddress(typed)
  expect(read).toMatchObject({ ok: true, url })
  expect(read.ok && read.cleaned?.length).toBeGreaterThan(0)
  expect(readAddress(url)).toEqual({ ok: true, url, host: 'shop.example' })
})

test('what a shop names its own things by stays, character by character', () => {
  for (const url of [
    'https://shop.example/c?ref=18650&tag=a%20b',
    'https://shop.example/c?a&b=&a=1',
    'https://shop.example/c?',
  ])
    expect(readAddress(url)).toMatchObject({ ok: true, url })
})

test('two addresses show one page with or without www, slashes at the end, another order; and nothing else does', () => {
  const page = pageOf('https://shop.example/c?a=1&b=2')
  for (const same of ['https://www.shop.example/c?b=2&a=1', 'https://shop.example/c//?a=1&b=2#drawing'])
    expect(pageOf(same), same).toBe(page)
  for (const other of [
    ...['https://shop.example/d?a=1&b=2', 'https://shop.example/c?a=1', 'https://shop.example/c?a=12&b='],
    ...['https://shop.example/c?a=1&b=2#/drawing'],
  ])
    expect(pageOf(other), other).not.toBe(page)
  expect(pageOf('https://bwww.shop.example/')).not.toBe(pageOf('https://bshop.example/'))
})
