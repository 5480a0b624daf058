import type { FileRefusal } from "@evenhand/shared/evidence";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sniffFile } from "./index.ts";

/** A byte for each character. */
function latin(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length);
  for (let at = 0; at < text.length; at += 1) bytes[at] = text.charCodeAt(at);
  return bytes;
}
const big = (value: number): string =>
  String.fromCharCode((value >>> 24) & 255, (value >>> 16) & 255, (value >>> 8) & 255, value & 255);
const little = (value: number): string =>
  String.fromCharCode(value & 255, (value >>> 8) & 255, (value >>> 16) & 255, (value >>> 24) & 255);

/** A JPEG's bones: start, segments beside the picture, a scan of some bytes, end. */
const segment = (marker: string, data: string): string =>
  `\u00ff${marker}${big(data.length + 2).slice(2)}${data}`;
const jpeg = (aside = "", scan = "picture\u00ff\u0000more"): string =>
  `\u00ff\u00d8${segment("\u00e0", "JFIF\0")}${aside}${segment("\u00da", "head")}${scan}\u00ff\u00d9`;
const chunk = (type: string, data: string): string => `${big(data.length)}${type}${data}CRC.`;
const png = (middle = ""): string =>
  `\u0089PNG\r\n\u001a\n${chunk("IHDR", "13 bytes here")}${middle}${chunk("IDAT", "x")}${chunk("IEND", "")}`;
const webp = (parts: string): string => `RIFF${little(parts.length + 4)}WEBP${parts}`;
const riff = (type: string, data: string): string => `${type}${little(data.length)}${data}`;
const box = (type: string, data: string): string => `${big(data.length + 8)}${type}${data}`;
const film = (brand: string): string => box("ftyp", `${brand}\0\0\0\0`) + box("moov", "m") + box("mdat", "d");
const pdf = "%PDF-1.7\n1 0 obj\n%%EOF\n";
const archive = `PK\u0003\u0004stuffPK\u0005\u0006${"\0".repeat(18)}`;

describe("what it is stands in its bytes", () => {
  test.each([
    ["jpeg", jpeg()],
    ["jpeg", `${jpeg()}\0\0${jpeg()}`],
    ["jpeg", jpeg() + film("mp42")],
    ["png", png()],
    ["webp", webp(riff("VP8 ", "data"))],
    ["avif", box("ftyp", "avif\0\0\0\0mif1") + box("meta", "m") + box("mdat", "d")],
    ["mp4", film("isom")],
    ["quicktime", film("qt  ")],
    ["pdf", pdf],
  ])("%s", (kind, text) => {
    expect(sniffFile(latin(text))).toEqual({ ok: true, kind });
  });
});

const refused: readonly (readonly [FileRefusal, string, string])[] = [
  ["empty", "nothing", ""],
  ["unknown", "a program", "MZ\u0090\0"],
  ["unknown", "an archive", archive],
  ["unknown", "words", "a photograph, honestly"],
  ["markup", "a drawing", "<svg xmlns='http://www.w3.org/2000/svg'/>"],
  ["markup", "a drawing after a sign of byte order", "\u00ef\u00bb\u00bf\n <?xml version='1.0'?><svg/>"],
  ["heic", "a telephone's own", box("ftyp", "heic\0\0\0\0mif1heic") + box("meta", "m")],
  ["moving", "GIF", "GIF89a"],
  ["moving", "PNG", png(chunk("acTL", "12345678"))],
  ["moving", "WebP", webp(riff("VP8X", "12345678") + riff("ANIM", "123456"))],
  ["moving", "AVIF", box("ftyp", "avis\0\0\0\0avif") + box("meta", "m")],
  ["two-in-one", "JPEG and page", `${jpeg()}<script>alert(1)</script>`],
  ["two-in-one", "page in a comment of a JPEG", jpeg(segment("\u00fe", "<SVG onload=x>"))],
  ["two-in-one", "JPEG and archive", jpeg() + archive],
  ["two-in-one", "PNG and anything", `${png()}anything`],
  ["two-in-one", "JPEG and what nobody knows", `${jpeg()}secret`],
  ["two-in-one", "JPEG and PDF", jpeg(segment("\u00fe", pdf))],
  ["two-in-one", "PDF and archive", pdf + archive],
  ["cut-short", "JPEG", jpeg().slice(0, -2)],
  ["cut-short", "PNG", png().slice(0, -3)],
  ["cut-short", "WebP", webp(riff("VP8 ", "data")).slice(0, -1)],
  ["cut-short", "film", film("isom").slice(0, -1)],
  ["cut-short", "film without its index", box("ftyp", "isom\0\0\0\0") + box("mdat", "d")],
  ["cut-short", "PDF", "%PDF-1.7\n1 0 obj\n"],
  ["metadata", "JPEG", jpeg(segment("\u00e1", "x".repeat(65_000)).repeat(70))],
  ["metadata", "PNG", png(chunk("tEXt", "x".repeat(4 * 1024 * 1024 + 1)))],
];

test.each(refused)("%s: %s", (reason, _, text) => {
  expect(sniffFile(latin(text))).toMatchObject({ ok: false, refused: { reason } });
});

test("a paper larger than papers may be is refused with both figures", () => {
  const large = new Uint8Array(25 * 1024 * 1024 + 1);
  large.set(latin(pdf));
  const found = sniffFile(large);
  expect(found).toEqual({ ok: false, refused: { reason: "bytes", found: 26, most: 25 } });
});

test("whatever bytes come after a known beginning, it is decided", () => {
  const starts = [
    jpeg(),
    png(),
    webp(""),
    film("isom"),
    pdf,
    "RIFF\0\0\0\0WEBP",
    "\u00ff\u00d8\u00ff",
    "\0\0\0\u0001ftyp",
  ];
  fc.assert(
    fc.property(
      fc.constantFrom(...starts),
      fc.nat(80),
      fc.uint8Array({ maxLength: 200 }),
      (start, keep, rest) => {
        expect(typeof sniffFile(Uint8Array.from([...latin(start.slice(0, keep)), ...rest])).ok).toBe(
          "boolean",
        );
      },
    ),
    { numRuns: 2000 },
  );
});
