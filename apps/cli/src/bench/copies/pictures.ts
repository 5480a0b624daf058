import { type DrawnCar, drawnPhotograph, type DrawnView } from "@evenhand/evidence/drawn-photograph";
import type { Gray } from "@evenhand/evidence/gray";
import { seededRandom } from "@evenhand/measurement/random";
import sharp from "sharp";

const [WIDE, HIGH] = [1280, 960];

const paints = [
  "#a9aeb4",
  "#c79a3a",
  "#e6dcc0",
  "#8c1f24",
  "#24476b",
  "#2f4a36",
  "#dadada",
  "#5b3a2a",
  "#6f7f8c",
];
const trims = ["#7a4a32", "#222426", "#b59b77", "#4a2a22"];

/** An invented car by its number: color, trim, plate, marks and rust of its own. */
const carOf = (at: number): DrawnCar => ({
  paint: paints[at % paints.length] ?? "#888888",
  trim: trims[at % trims.length] ?? "#333333",
  number: `0X${String((at + 3) * 7919).padStart(7, "4")}Q${String(100_000 + at * 7331)}`,
  odometer: String(100_000 + ((at * 48_271) % 899_999)),
  seed: at * 13 + 5,
  rust: (at % 5) / 5,
});

const grain = Buffer.from(
  Uint8Array.from(
    { length: WIDE * HIGH * 3 },
    (
      (random) => () =>
        104 + 48 * random()
    )(seededRandom(9)),
  ),
);
const grainFrom = (seed: number): Buffer => {
  const from = ((seed * 7919) % HIGH) * WIDE * 3;
  return Buffer.concat([grain.subarray(from), grain.subarray(0, from)]);
};

type Taken = {
  readonly view: DrawnView;
  readonly car: number;
  readonly seed: number;
  readonly light: number;
  readonly hand: number;
};

/** A photograph of an invented car, with the grain of its own moment, as a camera compresses it. */
export async function photographed({ view, car, seed, light, hand }: Taken): Promise<Buffer> {
  const svg = Buffer.from(drawnPhotograph({ view, car: carOf(car), seed, light, hand }));
  const plain = await sharp(svg).removeAlpha().png({ compressionLevel: 1 }).toBuffer();
  return sharp(plain)
    .composite([
      {
        input: grainFrom(seed * 31 + car),
        raw: { width: WIDE, height: HIGH, channels: 3 },
        blend: "soft-light",
      },
    ])
    .jpeg({ quality: 86 })
    .toBuffer();
}

/** The small copy as the service makes it, in gray. */
export async function smallGray(photograph: Buffer): Promise<Gray> {
  const small = await sharp(photograph)
    .resize({ width: 400, height: 400, fit: "inside", withoutEnlargement: true })
    .webp({ quality: 80 })
    .toBuffer();
  const { data, info } = await sharp(small).greyscale().raw().toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data: new Uint8Array(data) };
}

const cut = (left: number, top: number, share: number) => (bytes: Buffer) =>
  sharp(bytes)
    .extract({
      left: Math.round(left * WIDE),
      top: Math.round(top * HIGH),
      width: Math.round(share * WIDE),
      height: Math.round(share * HIGH),
    })
    .jpeg({ quality: 80 })
    .toBuffer();

/** What is done to a picture on its way from one to another. */
export const TRANSFORMS: Readonly<Record<string, (bytes: Buffer, at: number) => Promise<Buffer>>> = {
  "scaled to a half": (bytes) => sharp(bytes).resize(640).jpeg({ quality: 80 }).toBuffer(),
  "compressed to quality 35": (bytes) => sharp(bytes).jpeg({ quality: 35 }).toBuffer(),
  "cut to 95 % around the middle": cut(0.025, 0.025, 0.95),
  "cut to 90 % around the middle": cut(0.05, 0.05, 0.9),
  "cut to 95 % in a corner": (bytes, at) => cut(at % 2 === 0 ? 0 : 0.05, at % 4 < 2 ? 0.05 : 0, 0.95)(bytes),
  "made lighter": (bytes) => sharp(bytes).linear(1.2, 12).jpeg({ quality: 80 }).toBuffer(),
  "made darker": (bytes) => sharp(bytes).linear(0.75, -8).jpeg({ quality: 80 }).toBuffer(),
  "in a white border": (bytes) =>
    sharp(bytes)
      .extend({ top: 40, bottom: 40, left: 40, right: 40, background: "white" })
      .jpeg({ quality: 80 })
      .toBuffer(),
  "cut in a corner, scaled, darker, compressed": async (bytes, at) => {
    const part = await cut(at % 2 === 0 ? 0 : 0.05, at % 4 < 2 ? 0.05 : 0, 0.95)(bytes);
    return sharp(part).resize(800).linear(0.9, -4).jpeg({ quality: 55 }).toBuffer();
  },
};
