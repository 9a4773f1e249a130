// What is under way: a stop waits for it.

export type Running = {
  /** `task` never rejects. */
  during(task: Promise<void>): void
  /** Resolves once nothing is under way that was when it was asked. */
  idle(): Promise<unknown>
}

export function openRunning(): Running {
  const running = new Set<Promise<void>>()
  return {
    during(task) {
      const work = task.finally(() => running.delete(work))
      running.add(work)
    },
    idle: () => Promise.allSettled([...running]),
  }
}
