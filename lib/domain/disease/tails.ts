/** How likely chance alone goes so far. */

/** Of chi-square as large as this or larger: the upper incomplete gamma function. */
export function chiSquareTail(chiSquare: number, degrees: number): number {
  if (chiSquare <= 0) return 1
  const [a, x] = [degrees / 2, chiSquare / 2]
  const front = Math.exp(a * Math.log(x) - x - lnGamma(a))
  return x < a + 1 ? 1 - front * lowerSeries(a, x) : front * upperFraction(a, x)
}

/** Of a normal value as small as this or smaller. */
export function normalTail(z: number): number {
  const beyond = chiSquareTail(z * z, 1) / 2
  return z < 0 ? beyond : 1 - beyond
}

function lowerSeries(a: number, x: number): number {
  let term = 1 / a
  let sum = term
  for (let n = 1; Math.abs(term) > sum * 1e-16; n++) {
    term *= x / (a + n)
    sum += term
  }
  return sum
}

/** Lentz's way to a continued fraction. */
function upperFraction(a: number, x: number): number {
  const tiny = 1e-300
  let b = x + 1 - a
  let c = 1 / tiny
  let d = 1 / b
  let fraction = d
  for (let n = 1; n < 1000; n++) {
    const numerator = -n * (n - a)
    b += 2
    d = 1 / nonZero(numerator * d + b)
    c = nonZero(b + numerator / c)
    const step = d * c
    fraction *= step
    if (Math.abs(step - 1) < 1e-15) break
  }
  return fraction

  function nonZero(value: number): number {
    return Math.abs(value) < tiny ? tiny : value
  }
}

/** Lanczos 1964, SIAM Journal on Numerical Analysis B 1:86-96, with g = 7. */
const lanczos = [
  676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
]

/** For numbers from a half up. */
function lnGamma(z: number): number {
  const base = z + 6.5
  const series = lanczos.reduce((sum, part, n) => sum + part / (z + n), 0.9999999999998099)
  return Math.log(Math.sqrt(2 * Math.PI) * series) + (z - 0.5) * Math.log(base) - base
}
