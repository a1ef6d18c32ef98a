/**
 * SHA-256 of a text in UTF-8, in base 64, as the security policy of a page names a script that it lets run. The hash of the
 * platform answers later and only in a secure context; this one is asked while a page is written.
 *
 * @see FIPS 180-4, sections 4.1.2, 5.3.3 and 6.2
 */
export function sha256(text: string): string {
  const bytes = padded(new TextEncoder().encode(text));
  const view = new DataView(bytes.buffer);
  const hash = firstBits(2);
  const constants = firstBits(3);
  const schedule = new Int32Array(64);
  for (let block = 0; block < bytes.length; block += 64) {
    for (let t = 0; t < 16; t++) schedule[t] = view.getInt32(block + 4 * t);
    for (let t = 16; t < 64; t++) {
      const [early, late] = [at(schedule, t - 15), at(schedule, t - 2)];
      const small = turned(early, 7) ^ turned(early, 18) ^ (early >>> 3);
      const large = turned(late, 17) ^ turned(late, 19) ^ (late >>> 10);
      schedule[t] = at(schedule, t - 16) + small + at(schedule, t - 7) + large;
    }
    let [a, b, c, d, e, f, g, h] = [...hash] as [number, number, number, number, number, number, number, number];
    for (let t = 0; t < 64; t++) {
      const chosen = (turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)) + ((e & f) ^ (~e & g));
      const one = (h + chosen + at(constants, t) + at(schedule, t)) | 0;
      const two = (turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + ((a & b) ^ (a & c) ^ (b & c));
      [h, g, f, e, d, c, b, a] = [g, f, e, (d + one) | 0, c, b, a, (one + two) | 0];
    }
    for (const [index, word] of [a, b, c, d, e, f, g, h].entries()) hash[index] = at(hash, index) + word;
  }
  const out = new DataView(new ArrayBuffer(32));
  for (let word = 0; word < 8; word++) out.setInt32(4 * word, at(hash, word));
  return btoa(String.fromCharCode(...new Uint8Array(out.buffer)));
}

/** A one bit, zeros, and the number of bits, to whole blocks. */
function padded(message: Uint8Array): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(64 * Math.ceil((message.length + 9) / 64));
  bytes.set(message);
  bytes[message.length] = 0x80;
  new DataView(bytes.buffer).setBigUint64(bytes.length - 8, BigInt(message.length) * 8n);
  return bytes;
}

/** The first 32 bits behind the point of a root of the primes: square roots of the first 8, cube roots of the first 64. */
function firstBits(root: 2 | 3): Int32Array {
  const words: number[] = [];
  for (let n = 2; words.length < (root === 2 ? 8 : 64); n++) {
    if (!isPrime(n)) continue;
    const value = root === 2 ? Math.sqrt(n) : Math.cbrt(n);
    words.push(Math.floor((value - Math.floor(value)) * 2 ** 32) | 0);
  }
  return Int32Array.from(words);
}

function isPrime(n: number): boolean {
  for (let divisor = 2; divisor * divisor <= n; divisor++) if (n % divisor === 0) return false;
  return true;
}

function turned(word: number, by: number): number {
  return (word >>> by) | (word << (32 - by));
}

function at(words: Int32Array, index: number): number {
  return words[index] as number;
}
