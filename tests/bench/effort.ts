// How much a benchmark does: everything, or with `--quick` as little as still says something, every line in two minutes together.
export const quick = process.argv.includes('--quick')

/** The first figure usually, the second with `--quick`. */
export const usually = <T>(whole: T, brief: T): T => (quick ? brief : whole)
