import { WINDOWS } from "@evenhand/evidence/fingerprint";
import { HashTable } from "@evenhand/evidence/hash-table";
import type { PictureHash } from "@evenhand/evidence/perceptual-hash";
import { seededRandom } from "@evenhand/measurement/random";
import { median } from "../comparison-speed/blocks.ts";

const ASKED = 11;

/** Milliseconds of one run, the middle of several. */
function timed(work: (at: number) => void): number {
  return median(
    Array.from({ length: ASKED }, (_, at) => {
      const start = performance.now();
      work(at);
      return performance.now() - start;
    }),
  );
}

/** A search among so many pictures, and one pass that only reads and adds up as many numbers. */
export function tableSpeed(pictures: number): { readonly search: number; readonly pass: number } {
  const random = seededRandom(3);
  const half = (): number => Math.floor(random() * 2 ** 32);
  const print = (): PictureHash[] => WINDOWS.map(() => [half(), half()]);
  const table = new HashTable();
  for (let at = 0; at < pictures; at += 1) table.add(at, print());
  const asked = Array.from({ length: ASKED }, print);
  const search = timed((at) => void table.near(asked[at] ?? [], 12, 40));
  const numbers = new Uint32Array(pictures * WINDOWS.length * 2).fill(7);
  let sum = 0;
  const pass = timed(() => {
    for (let at = 0; at < numbers.length; at += 1) sum = (sum + (numbers[at] ?? 0)) | 0;
  });
  if (sum === 0.5) throw new Error("A sum of whole numbers is whole.");
  return { search, pass };
}
