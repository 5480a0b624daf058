import { DRAWN_VIEWS } from "@evenhand/evidence/drawn-photograph";
import sharp from "sharp";
import { photographed } from "../copies/pictures.ts";

/** Twelve million pixels, as telephones take them. */
const [WIDE, HIGH] = [4032, 3024];
const SHOTS = 10;
/** The ways EXIF says a camera was held. Each is another picture once it is upright. */
const HELD = 8;

/** The tag of EXIF that says how the camera was held: a number of 16 bits, once, the lowest byte first. */
const heldTag = Buffer.from([0x12, 0x01, 3, 0, 1, 0, 0, 0]);

/** The same bytes as of a camera that was held otherwise. */
function heldAs(photograph: Buffer, held: number): Buffer {
  const at = photograph.indexOf(heldTag);
  if (at < 0) throw new Error("The photograph does not say how its camera was held.");
  const turned = Buffer.from(photograph);
  turned.writeUInt16LE(held, at + heldTag.length);
  return turned;
}

async function taken(nth: number): Promise<Buffer> {
  const [view = "profile", car] = [
    DRAWN_VIEWS[nth % DRAWN_VIEWS.length],
    Math.floor(nth / DRAWN_VIEWS.length),
  ];
  const small = await photographed({ view, car, seed: nth + 1, light: 1, hand: 1 });
  return sharp(small)
    .resize(WIDE, HIGH)
    .sharpen()
    .withMetadata({ orientation: 1 })
    .jpeg({ quality: 90 })
    .toBuffer();
}

/** The same picture in a file that is not known yet: cameras, too, leave padding behind it. */
export const asAnotherFile = (photograph: Buffer, nth = 1): Buffer =>
  Buffer.concat([photograph, Buffer.alloc(nth)]);

/**
 * So many files of photographs at a telephone's size. Of the first eighty no two are one picture; a later one is a picture that was
 * there before.
 */
export async function photographsOf(count: number): Promise<readonly Buffer[]> {
  const made: Buffer[] = [];
  for (let nth = 0; nth < SHOTS; nth += 1) {
    const photograph = await taken(nth);
    for (let held = 1; held <= HELD; held += 1) made.push(heldAs(photograph, held));
  }
  return Array.from({ length: count }, (_, nth) =>
    asAnotherFile(made[nth % made.length] ?? Buffer.alloc(0), Math.floor(nth / made.length)),
  );
}
