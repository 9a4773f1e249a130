// What the parts of the page share: the frame they are drawn for, and how to do something.
import type { WireAct, WireFrame } from '../wire.ts'

export type Desk = {
  frame(): WireFrame
  /** Does it and shows what came of it; true when it worked. */
  perform(act: WireAct): Promise<boolean>
  /** Goes to another place. */
  visit(placeId: string): void
}
