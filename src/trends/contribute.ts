// Who leaves an outcome: everyone who did not say no, but nobody who could fill the counts alone.

/** Days an account must have existed. Against one person with several new accounts; our own figure. */
const leastAccountDays = 28

export type Contributor = {
  readonly accountDays: number
  /** Moderators read the releases: one who also fed them could take their own part off the counts. */
  readonly moderator: boolean
  readonly saidNo: boolean
  readonly serverSaidNo: boolean
}

export type Contributes =
  | { readonly ok: true }
  | {
      readonly ok: false
      readonly refusal: { readonly code: 'said-no' | 'server-said-no' | 'moderator' | 'account-too-new' }
    }

/** Whether a finished check may leave an outcome. */
export function mayContribute(who: Contributor): Contributes {
  const no = (code: 'said-no' | 'server-said-no' | 'moderator' | 'account-too-new') =>
    ({ ok: false, refusal: { code } }) as const
  if (who.saidNo) return no('said-no')
  if (who.serverSaidNo) return no('server-said-no')
  if (who.moderator) return no('moderator')
  if (!(who.accountDays >= leastAccountDays)) return no('account-too-new')
  return { ok: true }
}
