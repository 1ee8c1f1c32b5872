/** A number in a pill, beside the word that says what is counted. */
export function Count({ children }: { children: number }) {
  return <span className="count">{children}</span>
}
