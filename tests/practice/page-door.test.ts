// The stand-in's door: other names, other pages, odd bodies and too large bodies stay outside.
import { request } from 'node:http'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer, ids } from './hobby-server.ts'

let standIn: StandIn
beforeAll(async () => {
  standIn = await openStandIn({ scenario: hobbyServer })
})
afterAll(() => standIn.close())

const actHeaders = { 'content-type': 'application/json', 'x-practice': 'act' }

function ask(
  method: string,
  path: string,
  headers: Record<string, string> = {},
  body = '',
): Promise<{ status: number; text: string }> {
  return new Promise((resolve, reject) => {
    const asked = request(new URL(path, standIn.pageUrl), { method, headers }, response => {
      let text = ''
      response.on('data', chunk => {
        text += chunk
      })
      response.on('end', () => resolve({ status: response.statusCode ?? 0, text }))
    })
    asked.on('error', reject)
    asked.end(body)
  })
}

test('only this machine is served, under its own names', async () => {
  expect(new URL(standIn.pageUrl).hostname).toBe('127.0.0.1')
  expect((await ask('GET', '/')).status).toBe(200)
  expect((await ask('GET', '/', { host: 'evil.example' })).status).toBe(421)
  expect((await ask('GET', '/api/v10/gateway', { host: 'evil.example' })).status).toBe(421)
})

test('another page can neither act nor read', async () => {
  const say = JSON.stringify({ do: 'say', you: ids.wren, place: ids.bench, text: 'x' })
  const post = (headers: Record<string, string>) => ask('POST', '/act', headers, say).then(one => one.status)
  expect(await post({ ...actHeaders, origin: 'http://evil.example' })).toBe(403)
  expect(await post({ ...actHeaders, 'sec-fetch-site': 'cross-site' })).toBe(403)
  expect(await post({ 'content-type': 'text/plain' })).toBe(403)
  expect((await ask('GET', '/live', { 'sec-fetch-site': 'cross-site' })).status).toBe(403)
  expect(standIn.messages(ids.bench)).toEqual([])
  expect(await post({ ...actHeaders, origin: new URL(standIn.pageUrl).origin })).toBe(200)
  expect(standIn.messages(ids.bench)).toHaveLength(1)
})

test('odd and oversized bodies change nothing and are answered in words', async () => {
  expect((await ask('POST', '/act', actHeaders, 'not json')).text).toContain('trouble')
  expect((await ask('POST', '/act', actHeaders, '{"do":"launch"}')).text).toContain('trouble')
  expect((await ask('POST', '/act', actHeaders, `"${'x'.repeat(16 * 1024 * 1024)}"`)).status).toBe(413)
  const stranger = JSON.stringify({ do: 'click', you: 'nobody', message: '1', customId: 'x' })
  expect((await ask('POST', '/act', actHeaders, stranger)).text).toContain('There is no person')
})

test('only the page’s own files are served', async () => {
  for (const path of [
    '/page/../stand-in.ts',
    '/page/%2e%2e/stand-in.ts',
    '/page/tsconfig.json',
    '/page/none.ts',
    '/etc/passwd',
  ]) {
    expect((await ask('GET', path)).status).toBe(404)
  }
  const script = await ask('GET', '/page/main.ts')
  expect([script.status, script.text.includes(': WireFrame')]).toEqual([200, false])
})

test('the gateway takes no browser’s connection', async () => {
  const headers = {
    connection: 'Upgrade',
    upgrade: 'websocket',
    'sec-websocket-key': 'x3JJHMbDL1EzLkh9GBhXDw==',
    'sec-websocket-version': '13',
  }
  await expect(ask('GET', '/gateway', { ...headers, origin: 'http://evil.example' })).rejects.toThrow()
})
