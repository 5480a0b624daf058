import type { FileKind } from "@evenhand/shared/evidence";

const MIB = 1024 * 1024;

/** Most bytes of one file by what it is: a telephone's largest photograph, a long paper, a minute of film. */
export const MOST_BYTES: Readonly<Record<FileKind, number>> = {
  jpeg: 40 * MIB,
  png: 40 * MIB,
  webp: 40 * MIB,
  avif: 40 * MIB,
  pdf: 25 * MIB,
  mp4: 64 * MIB,
  quicktime: 64 * MIB,
};

/** Before it is known what it is, it may be as large as the largest kind. */
export const MOST_BYTES_OF_ANY = Math.max(...Object.values(MOST_BYTES));

/** A telephone of today takes up to 108 million pixels; what claims more wants the memory, not the picture. */
export const MOST_PIXELS = 110_000_000;
/** Of the shorter side: less shows nothing. */
export const LEAST_SIDE = 64;
/** Seconds of work on one picture. */
export const MOST_SECONDS = 60;
/** What stands around the picture in its file: EXIF, XMP, colors, maps of depth. */
export const MOST_METADATA_BYTES = 4 * MIB;

type Author = "dealer" | "inspector" | "carrier";

/** Most files of one report and of one place on it, by who writes it: an inspector comes home with two hundred. */
export const MOST_FILES: Readonly<Record<Author, { readonly report: number; readonly place: number }>> = {
  dealer: { report: 300, place: 20 },
  inspector: { report: 600, place: 40 },
  // Once around the car, and what was found: by somebody who waits at a curb.
  carrier: { report: 60, place: 12 },
};

/**
 * May one more file be sent for a report? `null` where it may.
 *
 * @param there how many the report has, and of those how many at the place meant
 * @example filesFull("dealer", { report: 300, place: 0 }) // "report"
 */
export const filesFull = (
  author: Author,
  there: { readonly report: number; readonly place: number },
): "report" | "place" | null => {
  if (there.report >= MOST_FILES[author].report) return "report";
  return there.place >= MOST_FILES[author].place ? "place" : null;
};
