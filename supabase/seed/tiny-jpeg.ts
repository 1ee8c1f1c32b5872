/** A picture of eight by eight grey dots: a whole JPEG without a word about who took it. */

/** `shade` from 0 to 63, dark to light. */
export function tinyJpeg(shade: number): Buffer {
  return Buffer.concat([
    Buffer.from([0xff, 0xd8]),
    segment(0xdb, [0, ...Array<number>(64).fill(16)]),
    // Eight bits, 8 by 8, one component without subsampling.
    segment(0xc0, [8, 0, 8, 0, 8, 1, 1, 0x11, 0]),
    segment(0xc4, huffmanOfOne(0x00, 6)),
    segment(0xc4, huffmanOfOne(0x10, 0)),
    segment(0xda, [1, 1, 0, 0, 63, 0]),
    // One byte of bits: code 0, six bits of brightness, code 0 for the end of the block.
    Buffer.from([(shade % 64) << 1]),
    Buffer.from([0xff, 0xd9]),
  ])
}

function segment(marker: number, bytes: readonly number[]): Buffer {
  const length = bytes.length + 2
  return Buffer.from([0xff, marker, length >> 8, length & 0xff, ...bytes])
}

/** A table with a single code, the bit 0. */
function huffmanOfOne(table: number, symbol: number): number[] {
  return [table, 1, ...Array<number>(15).fill(0), symbol]
}
