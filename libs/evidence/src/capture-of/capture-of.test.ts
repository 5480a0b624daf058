import { Capture } from "@evenhand/shared/evidence";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { captureOf } from "./index.ts";

test("time, camera and place of a photograph as a telephone writes them", () => {
  const tags = {
    Make: "Ostra\0",
    Model: "Field 7",
    Software: "7.1",
    DateTimeOriginal: new Date("2026-05-04T09:10:11Z"),
    OffsetTimeOriginal: "-05:00",
    DateTime: new Date("2026-05-04T09:10:12Z"),
    GPSLatitude: [41, 30, 36],
    GPSLatitudeRef: "N",
    GPSLongitude: [81, 15, 0],
    GPSLongitudeRef: "W",
  };
  expect(captureOf(tags)).toEqual({
    taken: "2026-05-04T09:10:11",
    offset: "-05:00",
    changed: "2026-05-04T09:10:12",
    camera: "Ostra Field 7",
    software: "7.1",
    place: { latitude: 41.51, longitude: -81.25 },
  });
});

test("one half of a place, or one off the globe, is none", () => {
  expect(captureOf({ GPSLatitude: [41, 0, 0], GPSLatitudeRef: "N" }).place).toBeNull();
  const off = { GPSLatitude: [91, 0, 0], GPSLatitudeRef: "N", GPSLongitude: [0, 0, 0], GPSLongitudeRef: "E" };
  expect(captureOf(off).place).toBeNull();
});

test("whatever stands in the tags, what is kept holds against its contract", () => {
  const anything = fc.oneof(fc.anything(), fc.date(), fc.array(fc.double()), fc.constantFrom("N", "W", "E"));
  const tags = fc.record({
    Make: anything,
    Model: anything,
    Software: anything,
    DateTimeOriginal: anything,
    OffsetTimeOriginal: anything,
    DateTime: anything,
    GPSLatitude: anything,
    GPSLatitudeRef: anything,
    GPSLongitude: anything,
    GPSLongitudeRef: anything,
  });
  fc.assert(
    fc.property(tags, (each) => {
      expect(Capture.safeParse(captureOf(each)).error).toBeUndefined();
    }),
    { numRuns: 1000 },
  );
});
