/** Part of the language's surroundings everywhere this runs, and pure; the types of libraries leave it out with the rest of them. */
declare const TextDecoder: new (
  label: string,
  options?: { readonly fatal?: boolean; readonly ignoreBOM?: boolean },
) => { decode: (bytes: Uint8Array) => string };

/** What a text file may be written in. */
export type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252" | "macintosh";

const markOf = (bytes: Uint8Array): Encoding | undefined => {
  const [first, second, third] = bytes;
  if (first === 0xef && second === 0xbb && third === 0xbf) return "utf-8";
  if (first === 0xff && second === 0xfe) return "utf-16le";
  return first === 0xfe && second === 0xff ? "utf-16be" : undefined;
};

/** Western text without a mark has a zero in every second byte where it is UTF-16. */
const unmarked16 = (bytes: Uint8Array): Encoding | undefined => {
  const looked = Math.min(bytes.length - (bytes.length % 2), 4096);
  if (looked < 4) return undefined;
  let [even, odd] = [0, 0];
  for (let at = 0; at < looked; at += 2) {
    if (bytes[at] === 0) even += 1;
    if (bytes[at + 1] === 0) odd += 1;
  }
  const most = looked / 2;
  if (odd > 0.6 * most && even < 0.1 * most) return "utf-16le";
  return even > 0.6 * most && odd < 0.1 * most ? "utf-16be" : undefined;
};

const isUtf8 = (bytes: Uint8Array): boolean => {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
};

/**
 * Bytes that stand for what people write in such sheets (°, ½, ¼, é, ×, ±, “ ” – ’ …) in one of the two and for something odd in the other.
 * Of what is written both ways nothing can be told, and Windows is the commoner.
 */
const [WINDOWS_BYTES, MAC_BYTES] = [
  new Set([
    0xb0, 0xb1, 0xb2, 0xb5, 0xbc, 0xbd, 0xbe, 0xd7, 0xe9, 0xe8, 0xfc, 0xf6, 0x93, 0x94, 0x96, 0x92, 0x85,
  ]),
  new Set([0xa1, 0x8e, 0x8f, 0x9f, 0x9a, 0xd2, 0xd3, 0xd0, 0xd5, 0xc9, 0xc3, 0xa0]),
];

const eightBit = (bytes: Uint8Array): Encoding => {
  let [windows, mac] = [0, 0];
  for (const byte of bytes) {
    if (byte < 0x80) continue;
    if (WINDOWS_BYTES.has(byte)) windows += 1;
    if (MAC_BYTES.has(byte)) mac += 1;
  }
  return mac > windows ? "macintosh" : "windows-1252";
};

/**
 * What a text file is written in: by its mark where it has one, else UTF-16 by its zeros, UTF-8 where it is that without a fault, and
 * otherwise the one of the two old Western encodings whose signs it makes sense in.
 *
 * @example encodingOf(Uint8Array.from([0x35, 0xb0, 0x43])) // "windows-1252"
 */
export const encodingOf = (bytes: Uint8Array): Encoding =>
  markOf(bytes) ?? unmarked16(bytes) ?? (isUtf8(bytes) ? "utf-8" : eightBit(bytes));

/**
 * The text of a file, whatever common encoding it is in; without its mark. What is no character becomes U+FFFD.
 *
 * @example decodeText(Uint8Array.from([0xff, 0xfe, 0x41, 0x00])) // "A"
 */
export const decodeText = (bytes: Uint8Array): string => new TextDecoder(encodingOf(bytes)).decode(bytes);
