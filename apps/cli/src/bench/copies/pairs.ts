import { DRAWN_VIEWS } from "@evenhand/evidence/drawn-photograph";
import { type Fingerprint, fingerprint } from "@evenhand/evidence/fingerprint";
import type { Gray } from "@evenhand/evidence/gray";
import { hashDistance } from "@evenhand/evidence/perceptual-hash";
import { samePicture } from "@evenhand/evidence/same-picture";
import { photographed, smallGray, TRANSFORMS } from "./pictures.ts";

/** Two pictures: in how many bits their nearest hashes differ, and how much of their detail is the same. */
export type Pair = { readonly kind: string; readonly distance: number; readonly agreement: number };

type Picture = { readonly gray: Gray; readonly print: Fingerprint };

async function pictureOf(bytes: Buffer): Promise<Picture> {
  const gray = await smallGray(bytes);
  return { gray, print: fingerprint(gray) };
}

/** Whole against every window, both ways, as the table of hashes does. */
function distanceOf(a: Fingerprint, b: Fingerprint): number {
  const [whole, other] = [a[0], b[0]];
  if (whole === undefined || other === undefined) return 64;
  return Math.min(
    ...b.map((each) => hashDistance(whole, each)),
    ...a.map((each) => hashDistance(each, other)),
  );
}

const compared = (kind: string, a: Picture, b: Picture): Pair => ({
  kind,
  distance: distanceOf(a.print, b.print),
  agreement: samePicture(a.gray, b.gray).agreement,
});

const OTHER_SHOT = "the same place of the same car, another shot";
const OTHER_CAR = "the same place of another car";
const TRIPOD = "the same place of another car, from the very same spot";
export const DIFFERENT = [OTHER_SHOT, OTHER_CAR, TRIPOD];

type Shot = { readonly picture: Picture; readonly fixed: Picture };

/** A picture of a view of one car held against its copies and another shot of the same; and a shot from a fixed spot. */
async function ofCar(view: (typeof DRAWN_VIEWS)[number], car: number, pairs: Pair[]): Promise<Shot> {
  const seed = DRAWN_VIEWS.indexOf(view) * 100 + car + 1;
  const light = 0.8 + 0.05 * (seed % 8);
  const bytes = await photographed({ view, car, seed, light, hand: 1 });
  const picture = await pictureOf(bytes);
  for (const [kind, transform] of Object.entries(TRANSFORMS))
    pairs.push(compared(kind, picture, await pictureOf(await transform(bytes, seed))));
  const again = await photographed({ view, car, seed: seed + 5_000, light: 1.8 - light, hand: 1 });
  pairs.push(compared(OTHER_SHOT, picture, await pictureOf(again)));
  const fixed = await pictureOf(await photographed({ view, car, seed: 7, light: 1, hand: 0 }));
  return { picture, fixed };
}

/** Copies and what only looks alike, of so many invented cars. */
export async function pairsOf(cars: number): Promise<readonly Pair[]> {
  const pairs: Pair[] = [];
  for (const view of DRAWN_VIEWS) {
    const shots: Shot[] = [];
    for (let car = 0; car < cars; car += 1) {
      const shot = await ofCar(view, car, pairs);
      for (const before of shots)
        pairs.push(
          compared(OTHER_CAR, before.picture, shot.picture),
          compared(TRIPOD, before.fixed, shot.fixed),
        );
      shots.push(shot);
    }
  }
  return pairs;
}
