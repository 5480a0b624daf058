import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { create, type Font } from "fontkit";

/** The faces of the paper, of one family that has the signs of the outcomes. */
export const faces = ["regular", "bold"] as const;
export type Face = (typeof faces)[number];

const files: Readonly<Record<Face, string>> = {
  regular: "@expo-google-fonts/inter/400Regular/Inter_400Regular.ttf",
  bold: "@expo-google-fonts/inter/600SemiBold/Inter_600SemiBold.ttf",
};

type Opened = { readonly bytes: Buffer; readonly font: Font };
const opened = new Map<Face, Opened>();

function open(face: Face): Opened {
  const there = opened.get(face);
  if (there !== undefined) return there;
  const bytes = readFileSync(createRequire(import.meta.url).resolve(files[face]));
  const font = create(bytes);
  if (!("layout" in font)) throw new Error(`${files[face]} holds more than one font.`);
  const made = { bytes, font };
  opened.set(face, made);
  return made;
}

/** The font's file. */
export const faceBytes = (face: Face): Buffer => open(face).bytes;

/**
 * Contextual alternates are off: the font would draw what somebody typed as `->` or `9x9` as an arrow and a multiplication sign, and
 * what people wrote stands as they wrote it. Kerning is off, so that letters stand where they were measured to.
 */
export const features: Record<string, boolean> = { calt: false, kern: false };

type Sign = { readonly advance: number; readonly there: boolean };
const signs: Readonly<Record<Face, Map<string, Sign>>> = { regular: new Map(), bold: new Map() };

/** A character's own sign, in letters of one point. Kept are those the font has, a few thousand. */
function signOf(character: string, face: Face): Sign {
  const known = signs[face].get(character);
  if (known !== undefined) return known;
  const { font } = open(face);
  const code = character.codePointAt(0) ?? 0;
  const { advanceWidth } = font.glyphForCodePoint(code);
  const sign = { advance: advanceWidth / font.unitsPerEm, there: font.hasGlyphForCodePoint(code) };
  if (sign.there) signs[face].set(character, sign);
  return sign;
}

/** Width of a text in points, letter by letter, as it is drawn. */
export function widthOf(text: string, face: Face, size: number): number {
  let ems = 0;
  for (const character of text) ems += signOf(character, face).advance;
  return ems * size;
}

/** Whether the font has a sign for a character. */
const hasSign = (character: string): boolean => faces.every((face) => signOf(character, face).there);

/** Stands for a character the font has no sign for. */
export const noSign = "□";

const graphemes = new Intl.Segmenter("en", { granularity: "grapheme" });

const steering = /[\p{Cc}\p{Cf}]/u;
const printed = (letter: string): string => {
  const [...seen] = letter.replaceAll(/[\p{Cc}\p{Cf}]/gu, "");
  return seen.every(hasSign) ? seen.join("") : noSign;
};

/**
 * Text as it can be printed: what only steers (control characters, marks of direction) is left out, and each letter the font has no
 * sign for is one box.
 *
 * @example printable("9 mm 😀") // "9 mm □"
 */
export function printable(text: string): string {
  const plain = text.normalize("NFC").replaceAll(/\s+/gu, " ");
  if (Array.from(plain).every(hasSign) && !steering.test(plain)) return plain;
  return [...graphemes.segment(plain)].map(({ segment }) => printed(segment)).join("");
}
