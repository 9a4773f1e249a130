// A cleaner that tells which variables it was given, as the name of a photo.
process.once('message', () => {
  const name = Object.keys(process.env).join()
  process.send?.({ is: 'cleaned', photos: [{ name, bytes: new Uint8Array(), width: 1, height: 1 }] })
})
