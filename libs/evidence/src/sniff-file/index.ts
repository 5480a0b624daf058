import type { FileKind } from "@evenhand/shared/evidence";
import { MOST_BYTES, MOST_METADATA_BYTES } from "../evidence-limits/index.ts";
import type { FileRefused } from "../refusal-words/index.ts";
import { boxesOf, brandsOf } from "./boxes.ts";
import { letters, startsWith } from "./bytes.ts";
import { followsNaturally, type Walked, walkJpeg, walkPng, walkWebp } from "./pictures.ts";
import { isTwoInOne } from "./two-in-one.ts";

export type Sniffed =
  { readonly ok: true; readonly kind: FileKind } | { readonly ok: false; readonly refused: FileRefused };

const MIB = 1024 * 1024;
const no = (refused: FileRefused): Sniffed => ({ ok: false, refused });

/** What the first bytes say it is: one of the kinds, or the reason why it is none. */
function begins(bytes: Uint8Array): FileKind | "heic" | "markup" | "moving" | "unknown" {
  if (startsWith(bytes, 0, "\u00ff\u00d8\u00ff")) return "jpeg";
  if (startsWith(bytes, 0, "\u0089PNG\r\n\u001a\n")) return "png";
  if (startsWith(bytes, 0, "RIFF") && startsWith(bytes, 8, "WEBP")) return "webp";
  if (startsWith(bytes, 0, "%PDF-")) return "pdf";
  if (startsWith(bytes, 0, "GIF8")) return "moving";
  if (startsWith(bytes, 4, "ftyp")) return ofBrands(brandsOf(bytes));
  // A sign of byte order and blanks may stand before markup.
  return /^(\u00ef\u00bb\u00bf|\u00ff\u00fe|\u00fe\u00ff)?[\s\0]*</.test(letters(bytes, 0, 256))
    ? "markup"
    : "unknown";
}

const heicBrand = /^(heic|heix|heim|heis|hevc|hevx)$/;
const filmBrand = /^(isom|iso[2-9]|mp4[12]|avc1|M4V |MSNV|dash|3gp[4-9])$/;

function ofBrands(brands: readonly string[]): ReturnType<typeof begins> {
  if (brands.includes("avis")) return "moving";
  if (brands.includes("avif")) return "avif";
  if (brands.some((brand) => heicBrand.test(brand))) return "heic";
  if (brands[0] === "qt  ") return "quicktime";
  return brands.some((brand) => filmBrand.test(brand)) ? "mp4" : "unknown";
}

function ofPicture(bytes: Uint8Array, kind: "jpeg" | "png" | "webp", walked: Walked): Sniffed {
  if (walked.end === null) return no({ reason: "cut-short" });
  if (walked.moves) return no({ reason: "moving" });
  if (walked.metadata > MOST_METADATA_BYTES)
    return no({ reason: "metadata", most: MOST_METADATA_BYTES / MIB });
  const isWhole = walked.end === bytes.length || (kind === "jpeg" && followsNaturally(bytes, walked.end));
  return isWhole ? { ok: true, kind } : no({ reason: "two-in-one" });
}

function ofBoxes(bytes: Uint8Array, kind: "avif" | "mp4" | "quicktime"): Sniffed {
  const types = boxesOf(bytes)?.map(({ type }) => type);
  const needed = kind === "avif" ? ["meta"] : ["moov", "mdat"];
  if (types === undefined || !needed.every((type) => types.includes(type)))
    return no({ reason: "cut-short" });
  return { ok: true, kind };
}

/** ISO 32000-2, 7.5.5: the last line of a PDF. */
const ofPdf = (bytes: Uint8Array): Sniffed =>
  letters(bytes, bytes.length - 1024, bytes.length).includes("%%EOF")
    ? { ok: true, kind: "pdf" }
    : no({ reason: "cut-short" });

function walk(bytes: Uint8Array, kind: FileKind): Sniffed {
  if (kind === "jpeg") return ofPicture(bytes, kind, walkJpeg(bytes));
  if (kind === "png") return ofPicture(bytes, kind, walkPng(bytes));
  if (kind === "webp") return ofPicture(bytes, kind, walkWebp(bytes));
  return kind === "pdf" ? ofPdf(bytes) : ofBoxes(bytes, kind);
}

/**
 * What a file is by its bytes alone, and whether it is that and nothing else, whole. Its name is never asked. Nothing is decoded:
 * whether the picture can be read is found out afterwards.
 *
 * @param bytes the whole file
 * @example sniffFile(new Uint8Array([1, 2, 3])) // { ok: false, refused: { reason: "unknown" } }
 */
export function sniffFile(bytes: Uint8Array): Sniffed {
  if (bytes.length === 0) return no({ reason: "empty" });
  const kind = begins(bytes);
  if (kind === "heic" || kind === "markup" || kind === "moving" || kind === "unknown")
    return no({ reason: kind });
  const most = MOST_BYTES[kind];
  if (bytes.length > most)
    return no({ reason: "bytes", found: Math.ceil(bytes.length / MIB), most: most / MIB });
  if (isTwoInOne(bytes, kind === "pdf")) return no({ reason: "two-in-one" });
  return walk(bytes, kind);
}
