/** As long as a note may be, and the name of an arborist. */

export const longestNote = 500
export const longestName = 120
