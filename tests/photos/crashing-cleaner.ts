// A cleaner that a file brings down, as a fault in a decoder would: it dies at the second photo.
import type { PhotoNews, PhotoWork } from '../../src/readers/photo/cleaner.ts'

process.once('message', (work: PhotoWork) => {
  const at = (photo: number) => ({ is: 'at', photo }) satisfies PhotoNews
  process.send?.(at(0))
  if (work.photos.length > 1) process.send?.(at(1), () => process.kill(process.pid, 'SIGSEGV'))
  else process.send?.({ is: 'cleaned', photos: [] } satisfies PhotoNews)
})
