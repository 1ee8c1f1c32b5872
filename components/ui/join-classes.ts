/** One class attribute from the parts that apply. */
export function joinClasses(...parts: (string | false | undefined)[]): string {
  return parts.filter(Boolean).join(' ')
}
