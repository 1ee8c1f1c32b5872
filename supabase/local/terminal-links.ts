/** Prints links with a code that a phone's camera reads. */
import { renderUnicodeCompact } from 'uqr'

export type Link = { label: string; url: string }

export function printLinks(
  links: readonly Link[],
  out: NodeJS.WritableStream = process.stdout
): void {
  for (const { label, url } of links) {
    out.write(`\n${label}\n${url}\n\n${renderUnicodeCompact(url, { ecc: 'L', border: 2 })}\n`)
  }
}
