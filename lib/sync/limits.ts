/** The times by which the loops go. */

/** Whoever asks waits this long for an answer, and then hears that there was none. */
export const answerLimitMs = 8_000
/** An inventory of a whole orchard goes up, is checked row by row and comes in as one. */
export const inventoryLimitMs = 120_000
/** Up to 200 kB over a weak signal. */
export const photoLimitMs = 60_000
/** After a restore, what was sent so lately is sent again. */
export const keepSentMs = 48 * 3600_000
export const heartbeatMs = 60_000
/** In a shift, this long without any frame makes one ask. */
export const silenceMs = 30_000
