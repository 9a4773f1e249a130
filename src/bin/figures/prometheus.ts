// The figures of a process, as Prometheus reads them: counted with prom-client, and without anything that could tell who it was about.
import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client'
import type { Figures } from '../../discord/gateway/figures.ts'

/** What can be asked for at any time. */
export type Gauges = {
  /** The connections by their number: whether each is up. */
  shards(): ReadonlyMap<number, boolean>
  /** How many tasks wait or run, by the name of their queue. */
  queues(): Readonly<Record<string, number>>
}

export type Prometheus = {
  readonly figures: Figures
  /** A statement of the database, in seconds. */
  queried(seconds: number): void
  /** All of them, in Prometheus' text format, with its content type. */
  text(): Promise<{ readonly type: string; readonly body: string }>
  /** Names what is asked for at each reading. */
  watch(gauges: Gauges): void
}

/** Discord waits three seconds; most answers take some hundredths. In seconds. */
const answerBuckets = [0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2, 3, 5]
const queryBuckets = [0.0001, 0.0005, 0.001, 0.005, 0.025, 0.1, 0.5, 2]
/** Whoever takes longer is told "unknown interaction" by Discord. */
const inTime = 3

export function openPrometheus(): Prometheus {
  const register = new Registry()
  const registers = [register]
  collectDefaultMetrics({ register, prefix: 'cellwary_' })
  const interactions = new Counter({
    name: 'cellwary_interactions_total',
    help: 'Interactions by kind and how they ended.',
    labelNames: ['kind', 'ended'],
    registers,
  })
  const answers = new Histogram({
    name: 'cellwary_answer_seconds',
    help: 'From an interaction’s arrival to its first answer.',
    buckets: answerBuckets,
    registers,
  })
  const late = new Counter({
    name: 'cellwary_late_answers_total',
    help: 'First answers after three seconds.',
    registers,
  })
  const refused = new Counter({
    name: 'cellwary_posts_refused_total',
    help: 'Messages to channels that Discord refused, by status.',
    labelNames: ['status'],
    registers,
  })
  const limits = new Counter({
    name: 'cellwary_rate_limits_total',
    help: 'Requests that Discord asked to wait.',
    registers,
  })
  const queries = new Histogram({
    name: 'cellwary_database_seconds',
    help: 'How long statements of the database took.',
    buckets: queryBuckets,
    registers,
  })
  const connected = new Gauge({
    name: 'cellwary_gateway_connected',
    help: 'Whether each connection to Discord is up.',
    labelNames: ['shard'],
    registers,
  })
  const waiting = new Gauge({
    name: 'cellwary_queue_length',
    help: 'Tasks that wait or run.',
    labelNames: ['queue'],
    registers,
  })
  let gauges: Gauges | undefined
  return {
    figures: {
      ended: (kind, ended) => interactions.inc({ kind, ended }),
      answered(seconds) {
        answers.observe(seconds)
        if (seconds > inTime) late.inc()
      },
      postRefused: status => refused.inc({ status }),
      rateLimited: () => limits.inc(),
    },
    queried: seconds => queries.observe(seconds),
    watch(asked) {
      gauges = asked
    },
    async text() {
      for (const [shard, up] of gauges?.shards() ?? []) connected.set({ shard }, up ? 1 : 0)
      for (const [queue, length] of Object.entries(gauges?.queues() ?? {})) waiting.set({ queue }, length)
      return { type: register.contentType, body: await register.metrics() }
    },
  }
}
