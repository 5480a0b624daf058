import { expect, test } from "vitest";
import { decodeText, encodingOf } from "./index.ts";

const bytes = (...list: readonly number[]) => Uint8Array.from(list);
const utf16 = (text: string, big: boolean) =>
  bytes(
    ...Array.from(text, (sign) => sign.codePointAt(0) ?? 0).flatMap((code) =>
      big ? [code >> 8, code & 255] : [code & 255, code >> 8],
    ),
  );

test.each([
  ["UTF-8 with its mark", bytes(0xef, 0xbb, 0xbf, 0x35, 0xc2, 0xb0), "utf-8", "5°"],
  ["UTF-8 without", new TextEncoder().encode("✓ 7⁄32″"), "utf-8", "✓ 7⁄32″"],
  ["UTF-16 with its mark", bytes(0xff, 0xfe, 0x35, 0, 0xb0, 0), "utf-16le", "5°"],
  ["UTF-16 without", utf16("tread,ok", false), "utf-16le", "tread,ok"],
  ["UTF-16, big end first", utf16("tread,ok", true), "utf-16be", "tread,ok"],
  ["Windows", bytes(0x35, 0xb0, 0x20, 0xbd), "windows-1252", "5° ½"],
  ["an old Mac", bytes(0x35, 0xa1, 0x20, 0xd2, 0x61, 0xd3), "macintosh", "5° “a”"],
])("%s is told and read", (_, file, encoding, text) => {
  expect(encodingOf(file)).toBe(encoding);
  expect(decodeText(file)).toBe(text);
});
