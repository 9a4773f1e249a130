// Who leaves no outcome, wherever they check.

export type OptOuts = {
  has(user: string): Promise<boolean>
  add(user: string): Promise<void>
  remove(user: string): Promise<void>
}
