// Answers /healthz, /readyz and /metrics on a port of their own, for this machine alone unless it is told otherwise.
import { once } from 'node:events'
import { createServer, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'

export type Health = {
  /** Undefined where clicks are answered; otherwise what is missing, in a word or two. */
  missing(): Promise<string | undefined>
  metrics(): Promise<{ readonly type: string; readonly body: string }>
}

export type FiguresServer = { readonly port: number; close(): Promise<void> }

/** Rejects where the port is taken. `/healthz` says that the process lives, `/readyz` that it can answer. */
export async function serveFigures(host: string, port: number, health: Health): Promise<FiguresServer> {
  const say = (response: ServerResponse, status: number, body: string, type = 'text/plain; charset=utf-8') =>
    response.writeHead(status, { 'content-type': type, 'cache-control': 'no-store' }).end(body)
  const answer = async (path: string, response: ServerResponse) => {
    if (path === '/healthz') return say(response, 200, 'alive\n')
    if (path === '/readyz') {
      const missing = await health.missing()
      return missing === undefined ? say(response, 200, 'ready\n') : say(response, 503, `not ready: ${missing}\n`)
    }
    if (path !== '/metrics') return say(response, 404, 'There are /healthz, /readyz and /metrics.\n')
    const { type, body } = await health.metrics()
    return say(response, 200, body, type)
  }
  const server = createServer((request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') return void say(response, 405, 'GET only.\n')
    answer((request.url ?? '').split('?', 1)[0] ?? '', response).catch(() => say(response, 500, 'failed\n'))
  })
  server.listen(port, host)
  await once(server, 'listening')
  return {
    port: (server.address() as AddressInfo).port,
    async close() {
      server.closeAllConnections()
      await new Promise<void>(resolve => server.close(() => resolve()))
    },
  }
}
