import { letters, startsWith, u16, u32, u32Little } from "./bytes.ts";

/** What is found walking a picture's own structure, without decoding it. */
export type Walked = {
  /** Bytes that are neither picture nor what it takes to read it. */
  readonly metadata: number;
  /** Where the picture ends; `null` where it never does. */
  readonly end: number | null;
  readonly moves: boolean;
};

/** Markers of JPEG (ITU-T T.81, table B.1) that stand alone, without a length. */
const standsAlone = (marker: number): boolean => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7);
const isAside = (marker: number): boolean => (marker >= 0xe0 && marker <= 0xef) || marker === 0xfe;

/** From a start of scan to the next marker that is no part of it. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = from; ;) {
    at = bytes.indexOf(0xff, at);
    if (at === -1 || at + 1 >= bytes.length) return bytes.length;
    const next = bytes[at + 1] ?? 0;
    if (next !== 0 && next !== 0xff && !standsAlone(next)) return at;
    at += next === 0xff ? 1 : 2;
  }
}

export function walkJpeg(bytes: Uint8Array): Walked {
  let [at, metadata] = [2, 0];
  while (at + 2 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xd9) return { metadata, end: at + 2, moves: false };
    if (marker === 0xff || standsAlone(marker)) {
      at += marker === 0xff ? 1 : 2;
      continue;
    }
    const length = u16(bytes, at + 2);
    if (isAside(marker)) metadata += length;
    at += 2 + length;
    if (marker === 0xda) at = endOfScan(bytes, at);
  }
  return { metadata, end: null, moves: false };
}

const pictureChunks = new Set(["IHDR", "PLTE", "IDAT", "IEND", "tRNS"]);

/** PNG, third edition: chunks of length, type, data and check. */
export function walkPng(bytes: Uint8Array): Walked {
  let [at, metadata, moves] = [8, 0, false];
  while (at + 12 <= bytes.length) {
    const [length, type] = [u32(bytes, at), letters(bytes, at + 4, at + 8)];
    if (type === "acTL") moves = true;
    if (!pictureChunks.has(type)) metadata += length;
    at += 12 + length;
    if (type === "IEND") return { metadata, end: at > bytes.length ? null : at, moves };
  }
  return { metadata, end: null, moves };
}

/** WebP (RFC 9649): a RIFF container that says its own length. */
export function walkWebp(bytes: Uint8Array): Walked {
  const end = 8 + u32Little(bytes, 4);
  if (end > bytes.length) return { metadata: 0, end: null, moves: false };
  let [at, metadata, moves] = [12, 0, false];
  while (at + 8 <= end) {
    const [type, length] = [letters(bytes, at, at + 4), u32Little(bytes, at + 4)];
    if (type === "ANIM" || type === "ANMF") moves = true;
    if (!/^(VP8[ LX]|ALPH|ANIM|ANMF)$/.test(type)) metadata += length;
    at += 8 + length + (length % 2);
  }
  return { metadata, end, moves };
}

/**
 * What may follow a JPEG that a telephone wrote: padding, further pictures of the same shot (CIPA DC-007), or the film of a moving
 * photograph. None of it is ever handed to others.
 */
export function followsNaturally(bytes: Uint8Array, from: number): boolean {
  if (startsWith(bytes, from + 4, "ftyp") || endsInTrailer(bytes)) return true;
  let at = from;
  while (at < bytes.length && bytes[at] === 0) at += 1;
  return at === bytes.length || (bytes[at] === 0xff && bytes[at + 1] === 0xd8);
}

/** A maker's own trailer, which says at its end what it is. */
const endsInTrailer = (bytes: Uint8Array): boolean => startsWith(bytes, bytes.length - 4, "SEFT");
