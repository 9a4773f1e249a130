// Lowers a priority, so that work behind the scenes never holds up a click.
import { constants, setPriority } from 'node:os'

/** Of a process, or (on Linux, where a thread has its own) of the calling thread. Where the system forbids it, all stays as it is. */
export function letClicksGoFirst(process = 0): void {
  try {
    setPriority(process, constants.priority.PRIORITY_LOW)
  } catch {
    // A service unit may forbid it (systemd's @resources); the work is the same.
  }
}
