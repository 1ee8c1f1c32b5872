/** SHA-256 in hex. The browser's own is missing over plain http, where a trial day may run. */

const primes = firstPrimes(64)
const roundConstants = primes.map((prime) => fraction32(Math.cbrt(prime)))
const startValues = primes.slice(0, 8).map((prime) => fraction32(Math.sqrt(prime)))

export function sha256Hex(text: string): string {
  const words = padded(new TextEncoder().encode(text))
  const hash = Int32Array.from(startValues)
  for (let at = 0; at < words.length; at += 16) mix(hash, words.subarray(at, at + 16))
  return Array.from(hash, (word) => (word >>> 0).toString(16).padStart(8, '0')).join('')
}

/** Ends with a one, zeros, and the length in bits. */
function padded(bytes: Uint8Array): Int32Array {
  const blocks = Math.ceil((bytes.length + 9) / 64)
  const block = new DataView(new ArrayBuffer(blocks * 64))
  bytes.forEach((byte, at) => {
    block.setUint8(at, byte)
  })
  block.setUint8(bytes.length, 0x80)
  block.setUint32(blocks * 64 - 8, Math.floor((bytes.length * 8) / 2 ** 32))
  block.setUint32(blocks * 64 - 4, bytes.length * 8)
  return Int32Array.from({ length: blocks * 16 }, (_, word) => block.getInt32(word * 4))
}

function mix(hash: Int32Array, block: Int32Array): void {
  const words = new Int32Array(64)
  words.set(block)
  for (let at = 16; at < 64; at++) {
    const early = word(words, at - 15)
    const late = word(words, at - 2)
    words[at] =
      word(words, at - 16) +
      word(words, at - 7) +
      (turned(early, 7) ^ turned(early, 18) ^ (early >>> 3)) +
      (turned(late, 17) ^ turned(late, 19) ^ (late >>> 10))
  }
  const now = Int32Array.from(hash)
  for (let at = 0; at < 64; at++) {
    const [a, b, c, e, f, g] = [0, 1, 2, 4, 5, 6].map((place) => word(now, place)) as Six
    const first =
      word(now, 7) +
      (turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)) +
      ((e & f) ^ (~e & g)) +
      (roundConstants[at] ?? 0) +
      word(words, at)
    const second = (turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))
    now.copyWithin(1, 0, 7)
    now[4] = word(now, 4) + first
    now[0] = first + second
  }
  now.forEach((value, place) => {
    hash[place] = word(hash, place) + value
  })
}

type Six = [number, number, number, number, number, number]

function word(words: Int32Array, at: number): number {
  return words[at] ?? 0
}

function turned(value: number, bits: number): number {
  return (value >>> bits) | (value << (32 - bits))
}

/** The first 32 bits behind the point. */
function fraction32(value: number): number {
  return Math.floor((value % 1) * 2 ** 32) | 0
}

function firstPrimes(count: number): number[] {
  const found: number[] = []
  for (let number = 2; found.length < count; number++) {
    if (found.every((prime) => number % prime !== 0)) found.push(number)
  }
  return found
}
