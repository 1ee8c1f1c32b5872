/** A picture as numbers: red, green, blue and opacity of each pixel, row by row. */
export type Pixels = { width: number; height: number; data: Uint8ClampedArray }
