// Says on standard error what is wrong with the input, and has the process end with 1.

export function fail(sentences: readonly string[]): void {
  for (const sentence of sentences) console.error(sentence)
  process.exitCode = 1
}
