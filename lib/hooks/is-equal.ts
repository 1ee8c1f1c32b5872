/** Whether two small results say the same. Large ones (a whole state, maps) are the same only if they are one. */

const mostKeys = 100

export function isEqual(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true
  if (Array.isArray(one) && Array.isArray(other)) {
    return (
      one.length === other.length &&
      one.length <= mostKeys &&
      one.every((item, at) => isEqual(item, other[at]))
    )
  }
  if (!isPlain(one) || !isPlain(other)) return false
  const keys = Object.keys(one)
  return (
    keys.length <= mostKeys &&
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && isEqual(one[key], other[key]))
  )
}

function isPlain(value: unknown): value is Record<string, unknown> {
  return (
    typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype
  )
}
