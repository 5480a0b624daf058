import type { Gray, Window } from "../gray/index.ts";
import { perceptualHash, type PictureHash } from "../perceptual-hash/index.ts";

const inCorner = (left: number, top: number): Window => ({ left, top, width: 0.95, height: 0.95 });
const inCenter = (share: number): Window => ({
  left: (1 - share) / 2,
  top: (1 - share) / 2,
  width: share,
  height: share,
});

/** What a copy may have been cut down to: the whole, the middle of it, a corner. `docs/copies.md` says what each finds. */
export const WINDOWS: readonly Window[] = [
  inCenter(1),
  inCenter(0.95),
  inCenter(0.9),
  inCorner(0, 0),
  inCorner(0.05, 0),
  inCorner(0, 0.05),
  inCorner(0.05, 0.05),
];

/** The hash of the whole, then of each smaller window. */
export type Fingerprint = readonly PictureHash[];

/**
 * What a picture is found again by, whole or cut: see {@link WINDOWS}.
 *
 * @example fingerprint({ width: 1, height: 1, data: new Uint8Array([9]) }).length // 7
 */
export const fingerprint = (gray: Gray): Fingerprint => WINDOWS.map((window) => perceptualHash(gray, window));

/** As it is stored: eight bytes a hash, the highest first. */
export function fingerprintBytes(print: Fingerprint): Uint8Array {
  const bytes = new Uint8Array(print.length * 8);
  const view = new DataView(bytes.buffer);
  for (const [at, [high, low]] of print.entries()) {
    view.setUint32(at * 8, high);
    view.setUint32(at * 8 + 4, low);
  }
  return bytes;
}

/** @throws RangeError where it is not whole hashes of every window */
export function readFingerprint(bytes: Uint8Array): Fingerprint {
  if (bytes.length !== WINDOWS.length * 8) throw new RangeError("This is no fingerprint of a picture.");
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  return WINDOWS.map((_, at) => [view.getUint32(at * 8), view.getUint32(at * 8 + 4)]);
}
