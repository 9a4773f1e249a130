// The manifests for Kubernetes under its own schemas (kubernetes-models), and both they and the compose file under what we promise of them.
import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { readShards } from '../../src/bin/read-shards.ts'
import { complaints, kinds, type Manifest, manifests, read, root, user } from './read-manifests.ts'

const text = read('deploy/kubernetes.yaml')

/** What does not go together in them. */
function broken(source: string): string[] {
  const all = manifests(source)
  const of = (kind: string) => all.find(one => one.kind === kind)
  const { spec } = of('StatefulSet')
  const pod = spec.template.spec
  const [bot] = pod.containers
  const env = (name: string): string | undefined => bot.env.find((one: Manifest) => one.name === name)?.value
  const says: string[] = []
  const shares = Array.from({ length: spec.replicas }, (_, i) =>
    readShards(String(env('CELLWARY_SHARDS')).replace('$(POD_INDEX)', String(i))),
  )
  const ids = shares.flatMap(one => (one.ok ? one.range.ids : []))
  const count = shares[0]?.ok ? shares[0].range.count : 0
  if (count === 0 || ids.join() !== Array.from({ length: count }, (_, i) => i).join())
    says.push('the pods do not share out every connection once')
  if (String(pod.securityContext.runAsUser) !== user) says.push('its user is not the image’s')
  const port = bot.ports[0].containerPort
  if (env('CELLWARY_FIGURES_PORT') !== String(port)) says.push('the port of figures is not the one that is asked')
  if (spec.serviceName !== of('Service').metadata.name) says.push('the service is another one')
  const labels = JSON.stringify(spec.template.metadata.labels)
  for (const one of [
    spec.selector.matchLabels,
    of('Service').spec.selector,
    of('NetworkPolicy').spec.podSelector.matchLabels,
    of('PodDisruptionBudget').spec.selector.matchLabels,
  ])
    if (JSON.stringify(one) !== labels) says.push(`selects ${JSON.stringify(one)}`)
  const volumes = pod.volumes.map((one: Manifest) => one.name).sort()
  if (
    bot.volumeMounts
      .map((one: Manifest) => one.name)
      .sort()
      .join() !== volumes.join()
  )
    says.push('volumes and mounts differ')
  const claim = pod.volumes.find((one: Manifest) => one.name === 'keys').persistentVolumeClaim.claimName
  const keys = of('PersistentVolumeClaim')
  if (keys.metadata.name !== claim || !keys.spec.accessModes.includes('ReadWriteMany'))
    says.push('the keys are not shared')
  const keysAt = bot.volumeMounts.find((one: Manifest) => one.name === 'keys').mountPath
  if (keysAt !== `${env('CELLWARY_DATA')}/keys`) says.push('the keys lie elsewhere')
  if (new Set(all.map(one => one.metadata.namespace)).size !== 1) says.push('not all in one namespace')
  return says
}

describe('the manifests for Kubernetes', () => {
  test('are what Kubernetes describes, one of each kind, and go together', () => {
    expect(complaints(text)).toEqual([])
    expect(kinds(text)).toEqual([
      'NetworkPolicy',
      'PersistentVolumeClaim',
      'PodDisruptionBudget',
      'Service',
      'StatefulSet',
    ])
    expect(broken(text)).toEqual([])
  })

  test.each([
    ['a number in words', 'replicas: 4', 'replicas: four', /replicas/],
    ['a missing selector', '  selector:\n    matchLabels: { app: cellwary }\n  template', '  template', /selector/],
    ['an environment variable that is no text', 'value: "9464"', 'value: 9464', /value/],
    [
      'ports that are no list',
      '          ports:\n            - { name: figures, containerPort: 9464 }',
      '          ports: figures',
      /ports/,
    ],
    ['a probe without a port', '{ path: /healthz, port: figures }', '{ path: /healthz }', /port/],
  ])('a slip is seen by the schema: %s', (_, from, to, says) => {
    expect(text).toContain(from)
    expect(complaints(text.replace(from, to)).join('\n')).toMatch(says)
  })

  test.each([
    ['fewer pods than parts', 'replicas: 4', 'replicas: 3', /share out/],
    ['another user', 'runAsUser: 1000', 'runAsUser: 0', /user/],
    ['keys of each its own', '[ReadWriteMany]', '[ReadWriteOnce]', /not shared/],
    ['keys in another place', 'mountPath: /data/keys', 'mountPath: /keys', /elsewhere/],
    ['another port', 'value: "9464"', 'value: "9465"', /port/],
    ['a mount that is missing', '            - { name: compiled, mountPath: /tmp }\n', '', /mounts/],
  ])('and one between two of them by us: %s', (_, from, to, says) => {
    expect(text).toContain(from)
    expect(broken(text.replace(from, to)).join('\n')).toMatch(says)
  })
})

// No schema of compose files was at hand; Docker's own reference is where the names are from.
describe('the compose file', () => {
  const file = parse(read('deploy/compose.yaml'), { uniqueKeys: true })

  test('starts the bot again after trouble, so often and no more; what it stands on always', () => {
    const { bot, ...others } = file.services as Record<string, Manifest>
    expect(bot?.restart).toMatch(/^on-failure:\d+$/)
    for (const one of Object.values(others)) expect(one.restart).toBe('always')
  })

  test('names only what is there: volumes, secrets, networks, services and files', () => {
    for (const service of Object.values<Manifest>(file.services)) {
      for (const network of service.networks) expect(file.networks).toHaveProperty(network)
      for (const secret of service.secrets ?? []) expect(file.secrets).toHaveProperty(secret)
      for (const other of Object.keys(service.depends_on ?? {})) expect(file.services[other]?.healthcheck).toBeDefined()
      for (const volume of service.volumes) {
        const [from] = volume.split(':')
        if (from.startsWith('.')) expect(existsSync(join(root, 'deploy', from)), from).toBe(true)
        else expect(file.volumes).toHaveProperty(from)
      }
    }
    expect(existsSync(join(root, 'deploy', file.services.bot.build.context, file.services.bot.build.dockerfile))).toBe(
      true,
    )
    expect(dirname(file.services.bot.build.dockerfile)).toBe('deploy')
  })

  test('the database is reached from inside alone, figures from this host alone, and no password stands in it', () => {
    expect(file.services.database.networks).toEqual(['inside'])
    expect(file.networks.inside).toEqual({ internal: true })
    expect(file.services.database.ports).toBeUndefined()
    expect(file.services.bot.ports).toBeUndefined()
    expect(file.services.figures.ports).toEqual(['127.0.0.1:9090:9090'])
    const secret = /\$\{POSTGRES_PASSWORD:\?/
    expect(file.services.bot.environment.DATABASE_URL).toMatch(secret)
    expect(file.services.database.environment.POSTGRES_PASSWORD).toMatch(secret)
  })

  test('Prometheus asks the bot where it shows its figures, and knows the alerts by the bot’s name', () => {
    const asked = parse(read('deploy/figures/prometheus.yaml'))
    const { environment } = file.services.bot
    expect(asked.scrape_configs[0].static_configs[0].targets).toEqual([`bot:${environment.CELLWARY_FIGURES_PORT}`])
    expect(read('deploy/figures/alerts.yaml')).toContain(`job="${asked.scrape_configs[0].job_name}"`)
  })
})
