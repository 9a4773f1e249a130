// The ids a check deals in: opaque texts, made elsewhere and only compared here.

export type CheckId = string
export type PersonId = string
export type RoleId = string
