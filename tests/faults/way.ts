// The way to PostgreSQL, which can be cut, shut and opened again.
import { connect, createServer, type Server, type Socket } from 'node:net'
import { postgresUrl } from '../stores/databases.ts'

export type Way = {
  readonly port: number
  /** Resets every connection; new ones are let through. */
  cut(): void
  /** As a server that stops: nobody is let through until it is opened again. */
  shut(): Promise<void>
  open(): Promise<void>
}

export async function openWay(): Promise<Way> {
  const sockets = new Set<Socket>()
  const { hostname, port: to } = new URL(postgresUrl)
  let server: Server
  const listen = (port: number) =>
    new Promise<number>(resolve => {
      server = createServer(socket => {
        const other = connect(Number(to || 5432), hostname)
        for (const one of [socket, other]) {
          sockets.add(one)
          one.on('error', () => undefined).on('close', () => sockets.delete(one))
        }
        // A pipe passes an end on, but no reset: without this, whoever waits behind a reset connection waits for good.
        socket.on('close', () => other.destroy())
        other.on('close', () => socket.destroy())
        socket.pipe(other).pipe(socket)
      }).listen(port, '127.0.0.1', () => resolve((server.address() as { port: number }).port))
    })
  const port = await listen(0)
  const cut = () => {
    for (const one of sockets) one.destroy()
  }
  return {
    port,
    cut,
    shut: () =>
      new Promise(resolve => {
        server.close(() => resolve())
        cut()
      }),
    open: async () => void (await listen(port)),
  }
}
