/** Records that are never changed in place; a change that changes nothing gives the same record. */

export function withEntry<Value>(
  record: Record<string, Value>,
  key: string | number,
  value: Value
): Record<string, Value> {
  return { ...record, [key]: value }
}

export function withoutKeys<Value>(
  record: Record<string, Value>,
  keys: readonly (string | number)[]
): Record<string, Value> {
  const gone = keys.filter((key) => Object.hasOwn(record, key))
  if (gone.length === 0) return record
  const rest = { ...record }
  for (const key of gone) delete rest[key]
  return rest
}

/** Changes one entry, if it is there. */
export function withChanged<Value>(
  record: Record<string, Value>,
  key: string | number,
  change: (value: Value) => Value
): Record<string, Value> {
  const value = record[key]
  return value === undefined ? record : withEntry(record, key, change(value))
}
