// The port on which interactions come over HTTP: a PING is answered, what Discord has signed gets in, and nothing else does.
import { generateKeyPairSync, sign } from 'node:crypto'
import { request } from 'node:http'
import { text as textOfStream } from 'node:stream/consumers'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type InteractionsServer, serveInteractions } from '../../src/discord/http/serve-interactions.ts'
import { openSignatures } from '../../src/discord/http/signature.ts'

describe('the port', () => {
  const { publicKey, privateKey } = generateKeyPairSync('ed25519')
  const hex = Buffer.from(publicKey.export({ format: 'jwk' }).x ?? '', 'base64url').toString('hex')
  const taken: unknown[] = []
  let server: InteractionsServer
  beforeAll(async () => {
    server = await serveInteractions(
      { host: '127.0.0.1', port: 0 },
      { isSigned: openSignatures(hex), take: interaction => void taken.push(interaction) },
    )
  })
  afterAll(() => server.close())

  async function post(body: string, headers: Readonly<Record<string, string>> = {}, path = '/interactions') {
    const { promise, resolve, reject } = Promise.withResolvers<{ status: number; body: string }>()
    request({ host: '127.0.0.1', port: server.port, path, method: 'POST', headers, agent: false }, response =>
      textOfStream(response).then(said => resolve({ status: response.statusCode ?? 0, body: said })),
    )
      .on('error', reject)
      .end(body)
    return promise
  }
  const signed = (body: string, timestamp = '1700000000') => ({
    'x-signature-ed25519': sign(null, Buffer.from(timestamp + body), privateKey).toString('hex'),
    'x-signature-timestamp': timestamp,
  })

  test('answers a PING, and takes what is signed', async () => {
    expect(await post('{"type":1}', signed('{"type":1}'))).toEqual({ status: 200, body: '{"type":1}' })
    expect(await post('{"type":3}', signed('{"type":3}'))).toEqual({ status: 202, body: '' })
    expect(taken.splice(0)).toEqual([{ type: 3 }])
  })

  const body = '{"type":3}'
  test.each<[string, Record<string, string>, number]>([
    ['nothing at all', {}, 401],
    ['no time', { 'x-signature-ed25519': signed(body)['x-signature-ed25519'] }, 401],
    ['another time', { ...signed(body), 'x-signature-timestamp': '1700000001' }, 401],
    ['another body', signed('{"type":2}'), 401],
    ['a signature that is none', { ...signed(body), 'x-signature-ed25519': 'zz' }, 401],
    ['a signature of half the length', { ...signed(body), 'x-signature-ed25519': 'ab'.repeat(32) }, 401],
    ['a signature of zeros', { ...signed(body), 'x-signature-ed25519': '00'.repeat(64) }, 401],
  ])('sends away what is signed by %s', async (_, headers, status) => {
    expect((await post(body, headers)).status).toBe(status)
    expect(taken).toEqual([])
  })

  test('sends away what is too large, no JSON or elsewhere', async () => {
    const large = JSON.stringify({ type: 3, x: 'x'.repeat(2 << 20) })
    // Whoever sends so much may find the line closed before they have read the answer.
    expect((await post(large, signed(large)).catch(() => ({ status: 413 }))).status).toBe(413)
    expect((await post('{', signed('{'))).status).toBe(400)
    expect((await post('3', signed('3'))).status).toBe(400)
    expect((await post(body, signed(body), '/')).status).toBe(404)
    expect(taken).toEqual([])
  })

  test('a key that is none is told at once', () => {
    expect(() => openSignatures('0'.repeat(63))).toThrow('public key')
  })
})
