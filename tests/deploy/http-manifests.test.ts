// Interactions over HTTP as deploy has them: under Kubernetes' own schemas, and what goes from door to process is one way that is open.
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { readConfig } from '../../src/bin/config.ts'
import { complaints, kinds, type Manifest, manifests, read, root, user } from './read-manifests.ts'

const text = read('deploy/kubernetes.http.yaml')

const podOf = (workload: Manifest): Manifest => workload.spec.template.spec
/** What the process is told, secrets as something that could stand there. */
function settingsOf(workload: Manifest) {
  const [bot] = podOf(workload).containers
  const env = bot.env.map((one: Manifest) => [one.name, one.value ?? 'postgres://database/cellwary'])
  const read = readConfig({ ...Object.fromEntries(env), DISCORD_TOKEN: 'a.b.c' })
  if (!read.ok) throw new Error(read.sentences.join())
  return read.config
}

/** What does not go together in them. */
function broken(source: string): string[] {
  const all = manifests(source)
  const of = (kind: string) => all.find(one => one.kind === kind)
  const [deployment, gateway] = [of('Deployment'), of('StatefulSet')]
  const says: string[] = []
  const [rule] = of('Ingress').spec.rules
  const [path] = rule.http.paths
  if (path.path !== '/interactions' || path.pathType !== 'Exact') says.push('another path is let in')
  if (of('Ingress').spec.tls[0].hosts.join() !== rule.host) says.push('the certificate is for another host')
  const service = of('Service')
  if (path.backend.service.name !== service.metadata.name) says.push('the door leads to no service')
  const port = service.spec.ports.find((one: Manifest) => one.name === path.backend.service.port.name)
  const opened = podOf(deployment).containers[0].ports.find((one: Manifest) => one.name === port?.targetPort)
  if (opened?.containerPort !== settingsOf(deployment).http?.port)
    says.push('the service leads to a port that nobody opens')
  if (settingsOf(deployment).http?.host !== '0.0.0.0') says.push('the port is open for the pod alone')
  const labels = deployment.spec.template.metadata.labels
  for (const one of [service.spec.selector, deployment.spec.selector.matchLabels])
    if (JSON.stringify(one) !== JSON.stringify(labels)) says.push(`selects ${JSON.stringify(one)}`)
  if (settingsOf(gateway).http || gateway.spec.replicas !== 1) says.push('not one process makes the connections')
  if (gateway.spec.template.metadata.labels.part === labels.part) says.push('interactions come to the connections')
  const ports = of('NetworkPolicy').spec.ingress.flatMap((one: Manifest) => one.ports.map((two: Manifest) => two.port))
  if (!ports.includes(opened?.name)) says.push('the ingress is not let through')
  for (const one of [deployment, gateway]) {
    const pod = podOf(one)
    if (String(pod.securityContext.runAsUser) !== user) says.push('its user is not the image’s')
    const keys = pod.volumes.find((volume: Manifest) => volume.name === 'keys')?.persistentVolumeClaim?.claimName
    if (keys !== of('PersistentVolumeClaim').metadata.name) says.push('the keys are not shared')
  }
  return says
}

describe('the manifests for Kubernetes', () => {
  test('are what Kubernetes describes, and go together', () => {
    expect(complaints(text)).toEqual([])
    expect(kinds(text)).toEqual([
      'Deployment',
      'Ingress',
      'NetworkPolicy',
      'PersistentVolumeClaim',
      'PodDisruptionBudget',
      'Service',
      'StatefulSet',
    ])
    expect(broken(text)).toEqual([])
  })

  test.each([
    ['a path of no kind', 'pathType: Exact', 'pathType: Whatever', /pathType/],
    ['a host that is a number', 'host: bot.example.org', 'host: 12', /host/],
  ])('a slip is seen by the schema: %s', (_, from, to, says) => {
    expect(text).toContain(from)
    expect(complaints(text.replace(from, to)).join('\n')).toMatch(says)
  })

  test.each([
    ['everything let in', 'path: /interactions', 'path: /', /another path/],
    ['another port', 'containerPort: 8080', 'containerPort: 8081', /nobody opens/],
    ['a port for the pod alone', '{ name: CELLWARY_HTTP_HOST, value: 0.0.0.0 }', '{ name: POD, value: x }', /alone/],
    ['two that make connections', 'replicas: 1', 'replicas: 2', /not one process/],
    ['a certificate for somebody else', 'hosts: [bot.example.org]', 'hosts: [example.org]', /certificate/],
    ['a policy that lets nobody in', 'port: interactions }\n    - from', 'port: 1 }\n    - from', /not let through/],
  ])('and one between two of them by us: %s', (_, from, to, says) => {
    expect(text).toContain(from)
    expect(broken(text.replace(from, to)).join('\n')).toMatch(says)
  })
})

describe('the compose file', () => {
  const over = parse(read('deploy/compose.http.yaml'), { uniqueKeys: true })
  const under = parse(read('deploy/compose.yaml'), { uniqueKeys: true })
  const { interactions, front } = over.services

  test('builds on the bot of the other file, which goes on making the connections', () => {
    expect(interactions.extends).toEqual({ file: 'compose.yaml', service: 'bot' })
    expect(under.services.bot.environment).not.toHaveProperty('CELLWARY_HTTP')
    const read = readConfig({
      DISCORD_TOKEN: 'a.b.c',
      ...under.services.bot.environment,
      DATABASE_URL: 'postgres://database/cellwary',
      ...interactions.environment,
    })
    expect(read).toMatchObject({ ok: true, config: { http: { host: '0.0.0.0', port: 8080 } } })
  })

  test('the front alone is reached from outside, and hands on to the port that is opened', () => {
    expect(interactions.ports).toBeUndefined()
    expect(front.ports).toEqual(['80:80', '443:443'])
    const handed = /\bdynamic a (\w+) (\d+)/.exec(read('deploy/http/Caddyfile'))
    expect(handed?.slice(1)).toEqual(['interactions', interactions.environment.CELLWARY_HTTP])
    for (const volume of front.volumes) {
      const [from] = volume.split(':')
      if (from.startsWith('.')) expect(existsSync(join(root, 'deploy', from)), from).toBe(true)
      else expect(over.volumes).toHaveProperty(from)
    }
    for (const network of front.networks) expect(under.networks).toHaveProperty(network)
  })
})
