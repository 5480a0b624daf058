import { describe, expect, test } from "vitest";
import { DRAWN_VIEWS, type DrawnCar, drawnPhotograph } from "./index.ts";

const car: DrawnCar = {
  paint: "#35506b",
  trim: "#b09a78",
  number: "M4W74K206611",
  odometer: "052910",
  seed: 3,
  rust: 0.4,
};

describe.each(DRAWN_VIEWS)("%s", (view) => {
  const drawn = drawnPhotograph({ view, car, seed: 1 });

  test("is whole SVG without a font, a script, or anything from outside", () => {
    expect(drawn).toMatch(/^<svg [^>]*viewBox="0 0 1280 960">.*<\/svg>$/s);
    expect(drawn).not.toMatch(/NaN|undefined|<text|<script|<image|href/);
    const opened = drawn.match(/<[a-zA-Z]/g)?.length ?? 0;
    expect(drawn.match(/<\/|\/>/g)).toHaveLength(opened);
  });

  test("is the same for the same seed, another shot for another, another car for another car", () => {
    expect(drawnPhotograph({ view, car, seed: 1 })).toBe(drawn);
    expect(drawnPhotograph({ view, car, seed: 2 })).not.toBe(drawn);
    expect(drawnPhotograph({ view, car: { ...car, seed: 4 }, seed: 1 })).not.toBe(drawn);
  });
});

/** Without the camera and its light. */
const inside = (seed: number): string =>
  drawnPhotograph({ view: "tire", car, seed })
    .replace(/transform="translate\([^"]*skewX[^"]*"/, "")
    .replace(/<radialGradient id="lit".*$/s, "");

test("what moves with the hand is the camera, not the car", () => {
  expect(inside(1)).toBe(inside(2));
});
