import { type Fingerprint, WINDOWS } from "../fingerprint/index.ts";
import { countOnes, type PictureHash } from "../perceptual-hash/index.ts";

/** A picture that may be the same as the one asked for, and in how many bits the nearest two of their hashes differ. */
export type Near = { readonly number: number; readonly distance: number };

/**
 * Fingerprints of all pictures beside each other in memory. Looking through them is one pass over numbers that lie in a row, 56 bytes a
 * picture: at a million pictures that is a tenth of a second, and an index by parts of the hash would cost more at a radius of 12 of 64
 * than it saves (Norouzi, Punjani and Fleet, "Fast search in Hamming space with multi-index hashing", 2012, from memory: it pays for
 * radii that are small beside the number of parts).
 */
export class HashTable {
  private numbers = new Float64Array(64);
  private bits = new Uint32Array(64 * WINDOWS.length * 2);
  private count = 0;

  get size(): number {
    return this.count;
  }

  /** @param number by which the picture is known outside */
  add(number: number, print: Fingerprint): void {
    if (this.count === this.numbers.length) this.grow();
    this.numbers[this.count] = number;
    const from = this.count * WINDOWS.length * 2;
    for (const [at, hash] of print.entries()) this.bits.set(hash, from + at * 2);
    this.count += 1;
  }

  /**
   * Pictures of which the whole looks like a window of the one asked for, or a window like its whole; the nearest first.
   *
   * @param radius in how many bits two hashes may differ
   * @param most how many of the nearest are given
   */
  near(print: Fingerprint, radius: number, most: number): Near[] {
    const [whole, ...windows] = print;
    if (whole === undefined) return [];
    const found: Near[] = [];
    for (let at = 0; at < this.count; at += 1) {
      const distance = this.distanceAt(at, whole, windows, radius);
      if (distance <= radius) found.push({ number: this.numbers[at] ?? 0, distance });
    }
    return found.toSorted((a, b) => a.distance - b.distance || a.number - b.number).slice(0, most);
  }

  /** Written as loops over numbers: this is where the time goes. */
  private distanceAt(at: number, whole: PictureHash, windows: Fingerprint, radius: number): number {
    const [bits, from] = [this.bits, at * WINDOWS.length * 2];
    let [least, high, low] = [65, whole[0], whole[1]];
    for (let next = from; next < from + WINDOWS.length * 2; next += 2) {
      const ones = countOnes((bits[next] ?? 0) ^ high);
      if (ones > radius || ones >= least) continue;
      least = Math.min(least, ones + countOnes((bits[next + 1] ?? 0) ^ low));
    }
    [high, low] = [bits[from] ?? 0, bits[from + 1] ?? 0];
    for (const window of windows) {
      const ones = countOnes(window[0] ^ high);
      if (ones > radius || ones >= least) continue;
      least = Math.min(least, ones + countOnes(window[1] ^ low));
    }
    return least;
  }

  private grow(): void {
    const [numbers, bits] = [this.numbers, this.bits];
    this.numbers = new Float64Array(numbers.length * 2);
    this.numbers.set(numbers);
    this.bits = new Uint32Array(bits.length * 2);
    this.bits.set(bits);
  }
}
