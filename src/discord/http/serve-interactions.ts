// The port on which Discord, or a load balancer in front of it, brings interactions: only what Discord has signed gets in.
import { once } from 'node:events'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { getRequestListener } from '@hono/node-server'
import { Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import type { Signed } from './signature.ts'

export type Interactions = {
  isSigned(signed: Signed): boolean
  /** Takes an interaction in; it is answered by a request of its own. */
  take(interaction: unknown): void
}

export type InteractionsServer = { readonly port: number; close(): Promise<void> }

/** An interaction is some kilobytes, the message it was pressed on included. */
const mostBytes = 1 << 20
/** Whoever needs longer than Discord itself waits for is not Discord; a stop waits for as long. In ms. */
const patience = {
  headersTimeout: 3_000,
  requestTimeout: 3_000,
  connectionsCheckingInterval: 1_000,
  keepAliveTimeout: 65_000,
}

const ping = 1
const pong = { type: 1 }

/** Rejects where the port is taken. */
export async function serveInteractions(
  { host, port }: { readonly host: string; readonly port: number },
  { isSigned, take }: Interactions,
): Promise<InteractionsServer> {
  const door = new Hono()
  door.post('/interactions', bodyLimit({ maxSize: mostBytes }), async c => {
    const body = new Uint8Array(await c.req.arrayBuffer())
    const signature = c.req.header('x-signature-ed25519')
    const timestamp = c.req.header('x-signature-timestamp')
    if (!isSigned({ signature, timestamp, body })) return c.text('invalid request signature', 401)
    const interaction = parsed(body)
    if (typeof interaction !== 'object' || interaction === null) return c.text('not an interaction', 400)
    if ('type' in interaction && interaction.type === ping) return c.json(pong)
    take(interaction)
    // Discord's documentation: whoever answers by a request of their own answers this one with 202 and no body.
    return c.body(null, 202)
  })
  door.notFound(c => c.text('There is POST /interactions.\n', 404))
  const listener: (request: IncomingMessage, response: ServerResponse) => void = getRequestListener(door.fetch, {
    overrideGlobalObjects: false,
  })
  const server = createServer(patience, listener)
  server.listen(port, host)
  await once(server, 'listening')
  return {
    port: (server.address() as AddressInfo).port,
    async close() {
      // What is arriving is still answered.
      await new Promise<void>(resolve => server.close(() => resolve()))
    },
  }
}

function parsed(body: Uint8Array): unknown {
  try {
    return JSON.parse(Buffer.from(body).toString('utf8'))
  } catch {
    return undefined
  }
}
