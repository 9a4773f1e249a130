// A server of files for the readers of attachments: it answers as a test says, and may never come to an end.
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterAll, beforeAll } from 'vitest'

export type FileAnswers = Readonly<Record<string, (request: IncomingMessage, response: ServerResponse) => void>>

/** Answers by path; connections that are left open are closed with the server. `origin` is known once the tests run. */
export function serveFiles(answers: FileAnswers): { readonly origin: string; readonly asked: number } {
  const served = { origin: '', asked: 0 }
  const server = createServer((request, response) => {
    served.asked++
    response.on('error', () => undefined)
    answers[request.url ?? '']?.(request, response)
  })
  beforeAll(async () => {
    await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve))
    served.origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  })
  afterAll(() => {
    server.closeAllConnections()
    server.close()
  })
  return served
}
