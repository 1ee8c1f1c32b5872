/** One thing to do, with its number. */
export function Order({ number, title, note }: { number: number; title: string; note: string }) {
  return (
    <li>
      <span className="number" aria-hidden="true">
        {number}
      </span>
      <span>
        {title}
        <small>{note}</small>
      </span>
    </li>
  )
}
