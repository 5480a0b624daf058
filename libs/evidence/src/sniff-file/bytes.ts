/** Reading numbers and letters out of bytes; past the end everything is nothing. */

export const u16 = (bytes: Uint8Array, at: number): number => ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);
export const u32 = (bytes: Uint8Array, at: number): number => u16(bytes, at) * 65_536 + u16(bytes, at + 2);
export const u32Little = (bytes: Uint8Array, at: number): number =>
  (bytes[at] ?? 0) +
  (bytes[at + 1] ?? 0) * 256 +
  (bytes[at + 2] ?? 0) * 65_536 +
  (bytes[at + 3] ?? 0) * 16_777_216;

/** One character a byte, as ISO 8859-1 has them. */
export const letters = (bytes: Uint8Array, from: number, to: number): string => {
  let text = "";
  for (let at = from; at < Math.min(to, bytes.length); at += 1) text += String.fromCharCode(bytes[at] ?? 0);
  return text;
};

export const startsWith = (bytes: Uint8Array, at: number, text: string): boolean =>
  letters(bytes, at, at + text.length) === text;
