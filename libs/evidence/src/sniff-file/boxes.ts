import { letters, u32 } from "./bytes.ts";

/** A box of the ISO base media file format (ISO/IEC 14496-12), as AVIF, HEIC, MP4 and MOV are made of. */
export type Box = { readonly type: string; readonly from: number; readonly to: number };

/** The boxes from the first byte on; `null` where one of them ends beyond the file. */
export function boxesOf(bytes: Uint8Array): readonly Box[] | null {
  const boxes: Box[] = [];
  let at = 0;
  while (at + 8 <= bytes.length) {
    const [small, type] = [u32(bytes, at), letters(bytes, at + 4, at + 8)];
    // 1: the size stands after the type, in eight bytes; 0: to the end of the file.
    const size = sizeOf(bytes, at, small);
    if (size < 8 || at + size > bytes.length) return null;
    boxes.push({ type, from: at, to: at + size });
    at += size;
  }
  return at === bytes.length ? boxes : null;
}

function sizeOf(bytes: Uint8Array, at: number, small: number): number {
  if (small === 0) return bytes.length - at;
  return small === 1 ? u32(bytes, at + 8) * 4_294_967_296 + u32(bytes, at + 12) : small;
}

/** The brands a file says it is of, the major one first. */
export function brandsOf(bytes: Uint8Array): readonly string[] {
  const end = Math.min(u32(bytes, 0), bytes.length, 256);
  const brands = [letters(bytes, 8, 12)];
  for (let at = 16; at + 4 <= end; at += 4) brands.push(letters(bytes, at, at + 4));
  return brands;
}
