/** Pictures of the ground from elsewhere, square by square, as the web's maps count them. */

export type Tiles = {
  /** With {z}, {x} and {y}. */
  url: string
  /** Whose pictures they are, which is said on the map. */
  by: string
}

/** As the root layout wrote it into the page; null: none is set. */
export function tilesInPage(): Tiles | null {
  const written = document.getElementById('rowcall-tiles')?.textContent
  // Only components/layout/TilesAddress.tsx writes it.
  const { url, by } = written ? (JSON.parse(written) as { url: string | null; by: string }) : {}
  return url ? { url, by: by ?? '' } : null
}

/** Who is asked for the pictures, and so sees which ground is looked at. */
export function hostOf({ url }: Tiles): string {
  return new URL(url).host
}
