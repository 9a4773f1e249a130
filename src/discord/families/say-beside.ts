// What is said beside a verdict: known fakes, other families and ways of building, and by which version it was judged.

import type { Check } from '../../check/check.ts'
import type { Program } from '../../engine/compile.ts'
import { isConstructionFamily } from '../../families/construction.ts'
import type { KnownFake } from '../../families/facts/facts-schema.ts'
import {
  type AgainstAll,
  againstAll,
  type Candidate,
  holdAgainst,
  looksLikeAnother,
} from '../../families/weigh/held-against.ts'
import { type FamilyDesk, isServerFamily } from '../../services/family-desk.ts'
import { sayWeek } from '../../words/dates.ts'
import { sayWhat } from '../../words/describe.ts'
import { sayFeature, together } from '../../words/family-words.ts'
import { plain } from '../../words/plain.ts'
import type { Say } from '../../words/say.ts'
import { cut } from '../message/parts.ts'

/** What of the families' desk it takes to say it. */
export type BesideDesk = Pick<FamilyDesk, 'candidates' | 'newer' | 'base' | 'built'>

/** So many families are named with what contradicts them. */
const mostNamed = 6

/** None for a danger: nothing then matters but what to do. */
export async function sayBeside(desk: BesideDesk, say: Say, program: Program, check: Check): Promise<string[]> {
  const { family, server, answers } = check
  if (family !== null && isConstructionFamily(family)) return [say('families.verdict.built')]
  const candidates = await desk.candidates(server)
  if (family === null) return ofUnlisted(desk, say, candidates, answers)
  if (!isServerFamily(family)) return []
  const sold = soldAs(program, candidates)
  const another = sold ? looksLikeAnother(sold, candidates, answers, new Set(check.confirmed ?? [])) : []
  const fakes = sold ? holdAgainst(sold, answers).fakes : []
  const version = program.packs.find(pack => pack.id === family)?.version.split('.')[0]
  const newer = await desk.newer(check)
  const features = [...new Set(another.flatMap(one => one.asMade))].filter(one => check.confirmed?.includes(one))
  return [
    ...fakes.map(({ since, title }) =>
      say('families.verdict.fake', { since: sayWeek(say, since), title: plain(title) }),
    ),
    ...(another.length > 0
      ? [
          say('families.verdict.another', {
            features: together(
              say,
              features.map(one => sayFeature(say, desk.base, one)),
            ),
            names: namesOf(
              say,
              another.map(one => one.candidate),
            ),
          }),
        ]
      : []),
    `-# ${say('families.verdict.version', { number: Number(version), name: sayWhat(say, program.family) })}`,
    ...(newer === undefined ? [] : [`-# ${say('families.verdict.newer', { number: newer })}`]),
  ]
}

/** The known fakes of its family that a cell matches; none for a danger. */
export async function fakesMatched(
  desk: Pick<FamilyDesk, 'candidates'>,
  program: Program,
  { family, server, answers }: Check,
): Promise<readonly KnownFake[]> {
  if (!isServerFamily(family)) return []
  const sold = soldAs(program, await desk.candidates(server))
  return sold ? holdAgainst(sold, answers).fakes : []
}

/** The family of the check's own version: its facts may be older than those in force. */
function soldAs(program: Program, candidates: readonly Candidate[]): Candidate | undefined {
  const pack = program.scope.find(one => one.id === program.family?.pack)
  const known = candidates.find(one => one.pack.id === pack?.id)
  return pack && known && { facts: known.facts, pack }
}

const namesOf = (say: Say, candidates: readonly Candidate[]): string =>
  together(say, [...new Set(candidates.slice(0, 4).map(one => plain(one.facts.identity.name)))])

function ofUnlisted(desk: BesideDesk, say: Say, candidates: readonly Candidate[], answers: Check['answers']): string[] {
  const own = candidates.length > 0
  const found = againstAll(own ? candidates : desk.built(), answers)
  const why = (all: Extract<AgainstAll, { is: 'fits-none' }>): string =>
    all.why
      .slice(0, mostNamed)
      .map(({ candidate, contradicts }) => {
        const [first] = contradicts
        return `${plain(candidate.facts.identity.name)} (${first ? sayFeature(say, desk.base, first) : ''})`
      })
      .join(', ')
  switch (found.is) {
    case 'nothing-to-say':
      return []
    case 'fits-none':
      return [
        cut(
          say(own ? 'families.verdict.fits-none' : 'families.verdict.fits-none.built', {
            of: found.of,
            why: why(found),
          }),
          700,
        ),
      ]
    case 'fits': {
      const names = namesOf(
        say,
        found.fit.map(one => one.candidate),
      )
      const count = found.fit.length
      return [
        cut(
          own
            ? say('families.verdict.fits', { names, count, of: found.of })
            : say('families.verdict.fits.built', { names, others: found.of - count }),
          700,
        ),
      ]
    }
    case 'fits-several':
      return own ? [say('families.verdict.fits-several', { count: found.fit.length, of: found.of })] : []
  }
}
