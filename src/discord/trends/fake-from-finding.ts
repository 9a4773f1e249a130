// From a finding about a server's own family to the form of a known fake, filled with what was found.

import { encodeFamily } from '../../custom-ids/family-id.ts'
import { newOpening } from '../../custom-ids/id-parts.ts'
import type { Program } from '../../engine/compile.ts'
import { atomsOf } from '../../engine/conditions.ts'
import { leadingFeatures } from '../../families/features.ts'
import { itemsOf } from '../../trends/findings/draft-rule.ts'
import type { Finding } from '../../trends/findings/finding.ts'
import { sayIn } from '../../words/say.ts'
import { fakeForm } from '../families/show/menus.ts'
import { workingOn } from '../families/working-on.ts'
import type { Clicked } from '../interaction/reply.ts'
import type { Services } from '../services.ts'

/** The looks in a finding, as "feature=option": where it was bought and what was claimed are none. */
export function looksIn(finding: Finding, program: Program | undefined): string[] {
  const items = itemsOf(finding)
  const looks = items.flatMap(item => {
    const [kind, rest] = [item.slice(0, item.indexOf(':')), item.slice(item.indexOf(':') + 1)]
    if (kind === 'answer') return [rest]
    const rule = kind === 'rule' ? program?.rules.find(one => one.id === rest) : undefined
    return rule
      ? atomsOf(rule.when).flatMap(atom => (atom.op === 'is' ? [`${atom.question}=${atom.options[0]}`] : []))
      : []
  })
  const known = leadingFeatures as readonly string[]
  return [...new Set(looks)].filter(one => known.includes(one.split('=')[0] ?? ''))
}

/** Opens the form; says why not where the family is gone or retired. */
export async function openFakeForm(
  services: Services,
  interaction: Clicked,
  server: string,
  finding: Finding,
  program: Program | undefined,
): Promise<'opened' | 'gone' | 'retired'> {
  const { family } = finding
  const work = await workingOn(services, server, family)
  if (!work || interaction.isModalSubmit()) return 'gone'
  if (work.family.state === 'retired') return 'retired'
  const { revision } = work.family
  const id = encodeFamily({
    family,
    revision,
    act: { is: 'fake-of', finding: finding.id, opening: newOpening(services.newId) },
  })
  const looks = looksIn(finding, program)
  await interaction.showModal(fakeForm(sayIn(interaction.locale), services.families.base, id, work.facts, { looks }))
  return 'opened'
}
