// What the doctor says of one thing it has looked at: how it is, in one line, and what to do about it.

/** `fine`; `note`: it works, and might be better; `trouble`: it may pass by itself; `wrong`: only the operator can mend it. */
export type Finding = {
  readonly about: string
  readonly is: 'fine' | 'note' | 'trouble' | 'wrong'
  readonly says: string
}

type Look = (says: string) => Finding
/** The four ways to speak about one thing. */
export const of = (about: string): Record<Finding['is'], Look> => ({
  fine: says => ({ about, is: 'fine', says }),
  note: says => ({ about, is: 'note', says }),
  trouble: says => ({ about, is: 'trouble', says }),
  wrong: says => ({ about, is: 'wrong', says }),
})
