import type { Capture } from "@evenhand/shared/evidence";

/** What of EXIF (CIPA DC-008-2023) is read, by the names of its tags; anything may stand in any of them. */
export type ExifTags = {
  readonly Make?: unknown;
  readonly Model?: unknown;
  readonly Software?: unknown;
  readonly DateTimeOriginal?: unknown;
  readonly OffsetTimeOriginal?: unknown;
  readonly DateTime?: unknown;
  readonly GPSLatitude?: unknown;
  readonly GPSLatitudeRef?: unknown;
  readonly GPSLongitude?: unknown;
  readonly GPSLongitudeRef?: unknown;
};

/** Printable and of a length a camera's maker would choose; else nothing. */
const text = (value: unknown): string | null => {
  if (typeof value !== "string") return null;
  const clean = value.replaceAll(/[^\P{C}]/gu, "").trim();
  return clean === "" ? null : clean.slice(0, 80);
};

/** `2026-05-04T09:00:00` by the camera's own clock, from the reader's date, which takes that clock for UTC. */
const clock = (value: unknown): string | null => {
  if (!(value instanceof Date) || Number.isNaN(value.getTime())) return null;
  const year = value.getUTCFullYear();
  return year < 1970 || year > 2199 ? null : value.toISOString().slice(0, 19);
};

const offset = (value: unknown): string | null =>
  typeof value === "string" && /^[+-]\d\d:\d\d$/.test(value) ? value : null;

/** Degrees, minutes and seconds with their hemisphere; `null` where one of them is no number or it lies off the globe. */
const degrees = (value: unknown, reference: unknown, [plus, minus]: string, most: number): number | null => {
  if (!Array.isArray(value) || value.length !== 3) return null;
  const parts = value.map((each: unknown) => (typeof each === "number" && each >= 0 ? each : Number.NaN));
  const [whole = Number.NaN, minutes = Number.NaN, seconds = Number.NaN] = parts;
  const size = whole + minutes / 60 + seconds / 3600;
  if (!(size <= most) || (reference !== plus && reference !== minus)) return null;
  return reference === minus ? -size : size;
};

const placeOf = (tags: ExifTags): Capture["place"] => {
  const latitude = degrees(tags.GPSLatitude, tags.GPSLatitudeRef, "NS", 90);
  const longitude = degrees(tags.GPSLongitude, tags.GPSLongitudeRef, "EW", 180);
  return latitude === null || longitude === null ? null : { latitude, longitude };
};

/** The model alone where it begins with the make, as many do. */
const cameraOf = (make: string | null, model: string | null): string | null => {
  if (make === null || model === null) return model ?? make;
  return model.toLowerCase().startsWith(make.toLowerCase()) ? model : `${make} ${model}`;
};

/**
 * What is kept of what a camera wrote. A tag that does not hold is left out, and never keeps a photograph from being taken.
 *
 * @example captureOf({ Make: "Ostra", Model: "Ostra 7" }).camera // "Ostra 7"
 */
export const captureOf = (tags: ExifTags): Capture => ({
  taken: clock(tags.DateTimeOriginal),
  offset: offset(tags.OffsetTimeOriginal),
  changed: clock(tags.DateTime),
  camera: cameraOf(text(tags.Make), text(tags.Model)),
  software: text(tags.Software),
  place: placeOf(tags),
});
