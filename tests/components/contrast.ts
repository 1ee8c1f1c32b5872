/** Contrast of two colours as WCAG 2.2 computes it (definitions of relative luminance and contrast ratio). */

export function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b)
  return (light + 0.05) / (dark + 0.05)
}

function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = channelsOf(hex).map(linear)
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}

function channelsOf(hex: string): number[] {
  const digits = /^#([0-9a-f]{6})$/i.exec(hex)?.[1]
  if (digits === undefined) throw new Error(`${hex} is not a colour of six digits`)
  return [0, 2, 4].map((at) => Number.parseInt(digits.slice(at, at + 2), 16) / 255)
}

function linear(channel: number): number {
  return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4
}
