import { Inflate } from "fflate";
import { TableRefusal } from "../refused/index.ts";
import { TABLE_LIMITS } from "../table-limits/index.ts";

/** A file in an archive, as its list at the end names it. */
export type ZipEntry = {
  readonly name: string;
  readonly method: number;
  readonly locked: boolean;
  readonly packed: number;
  readonly headerAt: number;
};

const END = 0x06054b50;
const LISTED = 0x02014b50;
const LOCAL = 0x04034b50;

/** The end of an archive has 22 bytes and a comment of up to 65,535. */
const endOf = (view: DataView): number => {
  const least = Math.max(0, view.byteLength - 22 - 0xffff);
  for (let at = view.byteLength - 22; at >= least; at -= 1) if (view.getUint32(at, true) === END) return at;
  throw new TableRefusal({ reason: "cut" });
};

const nameAt = (bytes: Uint8Array, at: number, length: number): string => {
  let name = "";
  for (const byte of bytes.subarray(at, at + length)) name += String.fromCodePoint(byte);
  return name;
};

const viewOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/**
 * What an archive holds, by its list; nothing is inflated.
 *
 * @throws {TableRefusal} where the list is cut off or longer than `TABLE_LIMITS.entries`
 */
export const openZip = (bytes: Uint8Array): ReadonlyMap<string, ZipEntry> => {
  const view = viewOf(bytes);
  if (bytes.length < 22) throw new TableRefusal({ reason: "cut" });
  const end = endOf(view);
  const count = view.getUint16(end + 10, true);
  if (count > TABLE_LIMITS.entries)
    throw new TableRefusal({ reason: "entries", found: count, most: TABLE_LIMITS.entries });
  const entries = new Map<string, ZipEntry>();
  let at = view.getUint32(end + 16, true);
  for (let index = 0; index < count; index += 1) {
    if (at + 46 > end || view.getUint32(at, true) !== LISTED) throw new TableRefusal({ reason: "cut" });
    const [names, extra, comment] = [28, 30, 32].map((offset) => view.getUint16(at + offset, true));
    const name = nameAt(bytes, at + 46, names ?? 0);
    entries.set(name, {
      name,
      method: view.getUint16(at + 10, true),
      locked: (view.getUint16(at + 8, true) & 1) === 1,
      packed: view.getUint32(at + 20, true),
      headerAt: view.getUint32(at + 42, true),
    });
    at += 46 + (names ?? 0) + (extra ?? 0) + (comment ?? 0);
  }
  return entries;
};

/** How much may still be inflated of one archive; what each part says of its size is not believed. */
export type Budget = { left: number };

const packedBytes = (bytes: Uint8Array, entry: ZipEntry): Uint8Array => {
  const view = viewOf(bytes);
  const { headerAt: at } = entry;
  if (at + 30 > bytes.length || view.getUint32(at, true) !== LOCAL) throw new TableRefusal({ reason: "cut" });
  const start = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  if (start + entry.packed > bytes.length) throw new TableRefusal({ reason: "cut" });
  return bytes.subarray(start, start + entry.packed);
};

const spend = (budget: Budget, bytes: number): void => {
  budget.left -= bytes;
  if (budget.left < 0)
    throw new TableRefusal({ reason: "inflated", most: Math.round(TABLE_LIMITS.inflated / 2 ** 20) });
};

const joined = (chunks: readonly Uint8Array[]): Uint8Array => {
  const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
};

/** Packed bytes are fed in steps: a byte of them inflates to a thousand at most, so that a bomb is noticed after a few mebibytes. */
const STEP = 4096;

const inflate = (packed: Uint8Array, name: string, budget: Budget): Uint8Array => {
  const chunks: Uint8Array[] = [];
  const stream = new Inflate((chunk) => {
    spend(budget, chunk.length);
    chunks.push(chunk);
  });
  try {
    for (let at = 0; at < packed.length; at += STEP)
      stream.push(packed.subarray(at, at + STEP), at + STEP >= packed.length);
  } catch (error) {
    if (error instanceof TableRefusal) throw error;
    throw new TableRefusal({ reason: "damaged", part: name });
  }
  return joined(chunks);
};

/**
 * The bytes of one file of an archive.
 *
 * @param budget what may still be inflated; lessened by what this file comes to
 * @throws {TableRefusal} where it is locked, damaged, cut off, packed in a way no workbook is, or more than the budget
 */
export const unpack = (bytes: Uint8Array, entry: ZipEntry, budget: Budget): Uint8Array => {
  if (entry.locked) throw new TableRefusal({ reason: "locked" });
  const packed = packedBytes(bytes, entry);
  if (entry.method === 8) return inflate(packed, entry.name, budget);
  if (entry.method !== 0) throw new TableRefusal({ reason: "damaged", part: entry.name });
  spend(budget, packed.length);
  return packed;
};
