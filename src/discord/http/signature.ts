// Whether a request comes from Discord: Ed25519 over its timestamp and body, as Discord's documentation has it ("Receiving and Responding").
import { createPublicKey, verify } from 'node:crypto'

/** What a request says of its own origin. */
export type Signed = {
  readonly signature: string | undefined
  readonly timestamp: string | undefined
  readonly body: Uint8Array
}

/** `publicKey`: that of the application, as 64 hexadecimal digits. Throws where it is none. */
export function openSignatures(publicKey: string): (signed: Signed) => boolean {
  if (!/^[0-9a-f]{64}$/i.test(publicKey)) throw new Error('the public key of the application is none')
  const x = Buffer.from(publicKey, 'hex').toString('base64url')
  const key = createPublicKey({ key: { kty: 'OKP', crv: 'Ed25519', x }, format: 'jwk' })
  return ({ signature = '', timestamp = '', body }) =>
    /^[0-9a-f]{128}$/i.test(signature) &&
    timestamp !== '' &&
    verify(null, Buffer.concat([Buffer.from(timestamp), body]), key, Buffer.from(signature, 'hex'))
}
