/** A symmetric positive definite matrix as L times its own transpose, and what can be asked of it then. */

export type Root = readonly (readonly number[])[]

export function choleskyOf(matrix: Root): Root {
  const root: number[][] = []
  for (const [row, values] of matrix.entries()) {
    const own: number[] = []
    root.push(own)
    for (let column = 0; column <= row; column++) {
      const other = root[column] ?? []
      let rest = values[column] ?? 0
      for (let at = 0; at < column; at++) rest -= (own[at] ?? 0) * (other[at] ?? 0)
      own.push(column === row ? Math.sqrt(rest) : rest / (other[column] ?? 1))
    }
  }
  return root
}

/** The x for which L times x is `right`. */
export function solveLower(root: Root, right: readonly number[]): number[] {
  const solved: number[] = []
  for (const [row, values] of root.entries()) {
    let rest = right[row] ?? 0
    for (let at = 0; at < row; at++) rest -= (values[at] ?? 0) * (solved[at] ?? 0)
    solved.push(rest / (values[row] ?? 1))
  }
  return solved
}

/** The x for which the transpose of L times x is `right`. */
export function solveUpper(root: Root, right: readonly number[]): number[] {
  const solved = right.map(() => 0)
  for (let row = root.length - 1; row >= 0; row--) {
    let rest = right[row] ?? 0
    for (let at = row + 1; at < root.length; at++) {
      rest -= (root[at]?.[row] ?? 0) * (solved[at] ?? 0)
    }
    solved[row] = rest / (root[row]?.[row] ?? 1)
  }
  return solved
}

/** The x for which the matrix times x is `right`. */
export function solveBoth(root: Root, right: readonly number[]): number[] {
  return solveUpper(root, solveLower(root, right))
}
