import { letters, u16, startsWith } from "./bytes.ts";

/** Opened by something that looks for these first, the file would be a page or a program. */
const code = /<script|<html|<svg|<!doctype|<\?php|<iframe|<body/i;
const looked = 64 * 1024;
/** Readers of PDF take a header that stands within the first so many bytes. */
const pdfWithin = 1024;

/** A ZIP archive's end stands last in its file, but for a comment whose length it says (APPNOTE 4.3.16). */
function endsAsArchive(bytes: Uint8Array): boolean {
  const least = Math.max(0, bytes.length - 22 - 65_535);
  for (let at = bytes.length - 22; at >= least; at -= 1)
    if (bytes[at] === 0x50 && startsWith(bytes, at, "PK\u0005\u0006")) {
      const comment = (bytes[at + 20] ?? 0) + (bytes[at + 21] ?? 0) * 256;
      if (at + 22 + comment === bytes.length) return true;
    }
  return false;
}

/**
 * Is the file something else too? Looked for at its head and its tail, where whatever would open it as that would look.
 *
 * @param isPdf it says itself that it is a PDF
 */
export function isTwoInOne(bytes: Uint8Array, isPdf: boolean): boolean {
  if (code.test(letters(bytes, 0, looked)) && !isPdf) return true;
  if (code.test(letters(bytes, Math.max(0, bytes.length - looked), bytes.length)) && !isPdf) return true;
  if (endsAsArchive(bytes)) return true;
  const head = letters(bytes, 0, pdfWithin);
  if (!isPdf && head.includes("%PDF-")) return true;
  return isPdf && (/<script|<html/i.test(head) || u16(bytes, 0) === 0xff_d8);
}
