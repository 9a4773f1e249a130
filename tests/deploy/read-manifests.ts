// Files of deploy/ as they stand, and Kubernetes' own schemas (kubernetes-models) to hold manifests against.
import { readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { Deployment, StatefulSet } from 'kubernetes-models/apps/v1'
import { Ingress, NetworkPolicy } from 'kubernetes-models/networking.k8s.io/v1'
import { PodDisruptionBudget } from 'kubernetes-models/policy/v1'
import { PersistentVolumeClaim, Service } from 'kubernetes-models/v1'
import { parseAllDocuments } from 'yaml'

export const root = resolve(import.meta.dirname, '../..')
export const read = (path: string): string => readFileSync(join(root, path), 'utf8')
export const user = /^USER (\d+):/m.exec(read('deploy/Containerfile'))?.[1]

const models = { StatefulSet, Deployment, Ingress, Service, PersistentVolumeClaim, NetworkPolicy, PodDisruptionBudget }
// biome-ignore lint/suspicious/noExplicitAny: what stands in a file has no type before a schema has seen it
export type Manifest = any
export const manifests = (source: string): Manifest[] =>
  parseAllDocuments(source, { uniqueKeys: true }).map(one => one.toJS())
export const kinds = (source: string): string[] =>
  manifests(source)
    .map(one => one.kind)
    .sort()

/** What is against Kubernetes' own description of them, by the kind of each. */
export function complaints(source: string): string[] {
  return manifests(source).flatMap(one => {
    const Model = models[one.kind as keyof typeof models]
    if (!Model) return [`no schema for ${one.kind}`]
    try {
      ;new (Model as new (data: Manifest) => { validate(): void })(one).validate()
      return []
    } catch (error) {
      return [`${one.kind}: ${error instanceof Error ? error.message : error}`]
    }
  })
}
