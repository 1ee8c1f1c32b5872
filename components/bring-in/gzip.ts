/** Text into a compressed file and back, as the browser does it. */

export async function gzipped(text: string): Promise<Blob> {
  const packing = new Blob([text]).stream().pipeThrough(new CompressionStream('gzip'))
  return new Response(packing).blob()
}

/** Null: it is not what was packed. */
export async function unzipped(file: Blob): Promise<string | null> {
  try {
    return await new Response(file.stream().pipeThrough(new DecompressionStream('gzip'))).text()
  } catch {
    return null
  }
}
