// Interactions brought to a URL instead of over the gateway, signed as Discord signs them, and the trial before a URL is taken.
// Source: Discord's documentation, "Receiving and Responding", "Preparing for Interactions".
import { generateKeyPairSync, sign } from 'node:crypto'
import { CannotDo } from '../people/cannot.ts'

export type Endpoint = {
  /** The application's public key, as 64 hexadecimal digits. */
  readonly publicKey: string
  readonly url: string | null
  /** Takes a URL once it has answered a PING and sent a forged one away; null goes back to the gateway. */
  set(url: string | null): Promise<void>
  /** Brings an interaction there; an answer that is none is as good as no answer. */
  bring(interaction: object): void
}

export function openEndpoint(now: () => number): Endpoint {
  const { publicKey, privateKey } = generateKeyPairSync('ed25519')
  let current: string | null = null

  async function post(url: string, interaction: object, forged = false): Promise<Response> {
    const body = JSON.stringify(interaction)
    const timestamp = String(Math.floor(now() / 1000))
    const signature = sign(null, Buffer.from(`${timestamp}${forged ? ' ' : ''}${body}`), privateKey)
    return fetch(url, {
      method: 'POST',
      headers: {
        'content-type': 'application/json',
        'x-signature-ed25519': signature.toString('hex'),
        'x-signature-timestamp': timestamp,
      },
      body,
    })
  }

  async function tried(url: string): Promise<void> {
    const ping = { type: 1, id: '1', version: 1 }
    const [answered, sentAway] = [await post(url, ping), await post(url, ping, true)]
    const { type } = (await answered.json().catch(() => ({}))) as { type?: number }
    await sentAway.body?.cancel()
    if (answered.status !== 200 || type !== 1) throw new CannotDo('The endpoint did not answer a PING.')
    if (sentAway.status !== 401) throw new CannotDo('The endpoint took a request that was not signed.')
  }

  return {
    publicKey: Buffer.from(publicKey.export({ format: 'jwk' }).x ?? '', 'base64url').toString('hex'),
    get url() {
      return current
    },
    async set(url) {
      if (url !== null) await tried(url)
      current = url
    },
    bring(interaction) {
      if (current !== null)
        post(current, interaction).then(
          answer => answer.body?.cancel(),
          () => undefined,
        )
    },
  }
}
