// What a person cannot do at all, such as pressing a button that is not there; a mistake of the test or the page.

/** Thrown before anything is sent to the bot; its message is plain words for whoever wrote the test or reads the page. */
export class CannotDo extends Error {
  override readonly name = 'CannotDo'
}
