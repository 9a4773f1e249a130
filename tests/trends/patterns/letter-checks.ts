// A self-made table of 24 checks, the first 8 recent; each letter is an item. Its figures were computed apart from our code.
export const letterChecks: readonly string[] =
  'AWR AWR AW AWRC AWR BC B AWR A B BC A B AC B A BR A B AC BW A B BC'.split(' ')
