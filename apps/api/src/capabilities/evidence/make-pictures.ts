import { captureOf, type ExifTags } from "@evenhand/evidence/capture-of";
import {
  LEAST_SIDE,
  MOST_METADATA_BYTES,
  MOST_PIXELS,
  MOST_SECONDS,
} from "@evenhand/evidence/evidence-limits";
import type { FileRefused } from "@evenhand/evidence/refusal-words";
import { fingerprint } from "@evenhand/evidence/fingerprint";
import type { Gray } from "@evenhand/evidence/gray";
import { MEASURED_SIDE, pictureQuality } from "@evenhand/evidence/picture-quality";
import { PICTURE_SIZES, PictureSize } from "@evenhand/shared/evidence";
import readExif from "exif-reader";
import type { Metadata, Sharp } from "sharp";
import type { Made } from "./picture-task.ts";

const MIB = 1024 * 1024;
const reading = { limitInputPixels: MOST_PIXELS, failOn: "warning", sequentialRead: true } as const;
const placeholderSide = 24;

/** Every way to read is shut but those of the four formats. */
async function loadSharp() {
  const { default: sharp } = await import("sharp");
  sharp.cache(false);
  sharp.concurrency(1);
  sharp.block({ operation: ["VipsForeignLoad"] });
  sharp.unblock({
    operation: [
      "VipsForeignLoadJpegBuffer",
      "VipsForeignLoadPngBuffer",
      "VipsForeignLoadWebpBuffer",
      "VipsForeignLoadHeifBuffer",
    ],
  });
  return sharp;
}

let loaded: ReturnType<typeof loadSharp> | undefined;
/** Loaded once. */
const openSharp = (): ReturnType<typeof loadSharp> => (loaded ??= loadSharp());

/** What its head says that keeps it from being taken. */
function findFault(found: Metadata): FileRefused | null {
  const { width, height } = found;
  if (width * height > MOST_PIXELS)
    return { reason: "pixels", found: Math.round((width * height) / 1e6), most: MOST_PIXELS / 1e6 };
  if (Math.min(width, height) < LEAST_SIDE) return { reason: "tiny", width, height, least: LEAST_SIDE };
  if ((found.pages ?? 1) > 1) return { reason: "moving" };
  if (found.space === "cmyk") return { reason: "print" };
  if (found.depth !== "uchar") return { reason: "deep" };
  const aside = [found.exif, found.xmp, found.iptc, found.icc].reduce(
    (sum, each) => sum + (each?.length ?? 0),
    0,
  );
  return aside > MOST_METADATA_BYTES ? { reason: "metadata", most: MOST_METADATA_BYTES / MIB } : null;
}

/** A block that cannot be read says nothing; the picture is taken all the same. */
function readTags(block: Buffer | undefined): ExifTags {
  if (block === undefined) return {};
  try {
    const { Image, Photo, GPSInfo } = readExif(block);
    return { ...Image, ...Photo, ...GPSInfo };
  } catch {
    return {};
  }
}

function whyNot(error: unknown): FileRefused {
  const said = error instanceof Error ? error.message : String(error);
  if (/timeout/i.test(said)) return { reason: "slow", most: MOST_SECONDS };
  if (/pixel limit/i.test(said))
    return { reason: "pixels", found: MOST_PIXELS / 1e6, most: MOST_PIXELS / 1e6 };
  return { reason: /premature|truncat|unexpected end|not enough/i.test(said) ? "cut-short" : "unreadable" };
}

async function grayOf(picture: Sharp): Promise<Gray> {
  const { data, info } = await picture.greyscale().raw().toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data };
}

/** A copy that was made before, in gray. */
export const readGray = async (copy: Uint8Array): Promise<Gray> => grayOf((await openSharp())(copy));

type Points = {
  readonly data: Buffer;
  readonly raw: { readonly width: number; readonly height: number; readonly channels: 1 | 2 | 3 | 4 };
};

const within = (side: number) =>
  ({ width: side, height: side, fit: "inside", withoutEnlargement: true }) as const;

async function pointsOf(picture: Sharp): Promise<Points> {
  const { data, info } = await picture.raw().toBuffer({ resolveWithObject: true });
  return { data, raw: { width: info.width, height: info.height, channels: info.channels } };
}

/** Upright and at the largest size. */
const largestOf = (whole: Sharp): Promise<Points> =>
  pointsOf(
    whole
      .autoOrient()
      .resize(within(PICTURE_SIZES.large))
      .toColourspace("srgb")
      .timeout({ seconds: MOST_SECONDS }),
  );

/** Decoded once; each size is made of the one above it. */
async function drawCopies(whole: Sharp) {
  const sharp = await openSharp();
  const of = ({ data, raw }: Points) => sharp(data, { raw });
  const large = await largestOf(whole);
  const medium = await pointsOf(of(large).resize(within(PICTURE_SIZES.medium)));
  const drawn: Readonly<Record<PictureSize, Sharp>> = {
    small: of(medium).resize(within(PICTURE_SIZES.small)),
    medium: of(medium),
    large: of(large),
  };
  const copies = [];
  for (const size of PictureSize.options) {
    const { data, info } = await drawn[size].webp({ quality: 80 }).toBuffer({ resolveWithObject: true });
    copies.push({ size, width: info.width, height: info.height, bytes: data });
  }
  const measured = await grayOf(of(medium).resize(within(MEASURED_SIDE)));
  const square = await grayOf(of(medium).resize({ width: 256, height: 256, fit: "fill" }));
  const blurred = await of(medium).resize(within(placeholderSide)).blur(1).webp({ quality: 40 }).toBuffer();
  return {
    copies,
    placeholder: `data:image/webp;base64,${blurred.toString("base64")}`,
    quality: pictureQuality(measured),
    print: fingerprint(square).map(([high, low]): [number, number] => [high, low]),
  };
}

/**
 * Three upright copies of a photograph and a blurred placeholder, none with any metadata, and what the camera wrote, apart.
 *
 * @param bytes of a picture that was sniffed before
 */
export async function makePictures(bytes: Uint8Array): Promise<Made> {
  const sharp = await openSharp();
  try {
    const found = await sharp(bytes, { ...reading, limitInputPixels: false }).metadata();
    const refused = findFault(found);
    if (refused !== null) return { ok: false, refused };
    const { autoOrient: upright } = found;
    const drawn = await drawCopies(sharp(bytes, reading));
    const capture = captureOf(readTags(found.exif));
    return { ok: true, picture: { width: upright.width, height: upright.height, capture, ...drawn } };
  } catch (error) {
    return { ok: false, refused: whyNot(error) };
  }
}
