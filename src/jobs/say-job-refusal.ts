// What stopped the weekly job, in a sentence for whoever runs the bot.
import type { closeWeeks } from './close-weeks.ts'

type Refusal = Extract<Awaited<ReturnType<typeof closeWeeks>>, { ok: false }>['refusal']

export function sayJobRefusal(refusal: Refusal): string {
  switch (refusal.code) {
    case 'clock-behind':
      return `The clock says it is week ${refusal.now}, but week ${refusal.closed} is closed already. Nothing was closed or deleted. Set this machine's clock right.`
    case 'clock-ahead':
      return `The clock says it is week ${refusal.now}, ${refusal.weeks} weeks after the last closed one, ${refusal.closed}. Nothing was closed or deleted. Set this machine's clock right; if it is right, close the weeks with “cellwary trends close”.`
    case 'damaged-state':
      return `What the release of week ${refusal.week} was counted from is damaged, so no later week was closed there; other servers are not touched by it. Restore the database from a back-up.`
    case 'damaged-count':
      return `A count of week ${refusal.row.week} makes no sense (${refusal.row.reporters} of ${refusal.row.facet}). The week was not closed. Restore the database from a back-up.`
  }
}
