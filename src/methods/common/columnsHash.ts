/** Odd constants with well-mixed bits: 2³² over the golden ratio, and two primes. */
const GOLDEN = 0x9e3779b1;
const PRIME_A = 0x85ebca77;
const PRIME_B = 0xc2b2ae3d;

/** Final mixing of one 32-bit word, so that every bit of the input moves every bit of the output. */
function mixed(word: number): number {
  let h = word;
  h = Math.imul(h ^ (h >>> 15), PRIME_A);
  h = Math.imul(h ^ (h >>> 13), PRIME_B);
  return (h ^ (h >>> 16)) >>> 0;
}

/** @internal Fast hash of named columns, 16 hexadecimal digits; it tells records apart, it does not protect them. */
export function columnsHash(columns: Readonly<Record<string, Float64Array | undefined>>): string {
  let a = 0x243f6a88;
  let b = 0x13198a2e;
  for (const name of Object.keys(columns).sort()) {
    const column = columns[name];
    if (!column) continue;
    for (let i = 0; i < name.length; i += 1) a = Math.imul(a ^ name.charCodeAt(i), GOLDEN);
    // the same bytes on every machine that JavaScript runs on today (little-endian)
    const words = new Uint32Array(column.buffer, column.byteOffset, 2 * column.length);
    // what b gives to a is put in with the next word, so that the word need not wait for it
    let given = 0;
    for (let i = 0; i < words.length; i += 2) {
      a = Math.imul(a ^ words[i]! ^ given, GOLDEN);
      b = Math.imul(b ^ words[i + 1]! ^ (a >>> 15), PRIME_A);
      given = b >>> 13;
    }
    a ^= given;
    b = Math.imul(b ^ column.length, PRIME_B);
  }
  const hex = (word: number): string => word.toString(16).padStart(8, '0');
  return hex(mixed(a ^ (b >>> 7))) + hex(mixed(b ^ (a >>> 11)));
}
