/** The line of a table that says what each column is. */
export function ColumnHeads({ heads }: { heads: readonly string[] }) {
  return (
    <thead>
      <tr>
        {heads.map((head) => (
          <th key={head} scope="col">
            {head}
          </th>
        ))}
      </tr>
    </thead>
  )
}
