// Works out what follows from a text once for each text: a database gives the same few thousands of times.

export function once<T>(work: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>()
  return text => {
    let value = known.get(text)
    if (value === undefined && !known.has(text)) {
      value = work(text)
      known.set(text, value)
    }
    return value as T
  }
}
