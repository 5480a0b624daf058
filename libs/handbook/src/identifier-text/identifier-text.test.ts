import { describe, expect, it } from "vitest";
import { misreading, normalizeNumber, normalizeVin } from "./index.ts";

describe("normalizing", () => {
  it("drops spaces, hyphens, points, stars and case", () => {
    expect(normalizeNumber(" *1g4-ah.59 h* ")).toBe("1G4AH59H");
  });

  it("drops what only says that a number follows, and no letter of the number", () => {
    expect(["No. 4417", "no 4417", "Nr. 4417", "№ 4417"].map(normalizeNumber)).toEqual(
      Array.from({ length: 4 }, () => "4417"),
    );
    expect(["NO4417", "NORTH 12", "NR8"].map(normalizeNumber)).toEqual(["NO4417", "NORTH12", "NR8"]);
  });

  it("reads letters a VIN never holds as the digits they look like, in 17 characters only", () => {
    expect(normalizeVin("IM8GDM9AXKPO4278Q")).toBe("1M8GDM9AXKP042780");
    expect(normalizeVin("IOQ")).toBe("IOQ");
  });
});

describe("misreading", () => {
  it.each([
    ["5501", "55-01", "same"],
    ["5S01", "5501", "look-alike"],
    ["80D1", "80O1", "look-alike"],
    ["80D1", "8001", "look-alike"],
    ["1L", "1I", "look-alike"],
    ["Z1", "21", "look-alike"],
    ["B1", "81", "look-alike"],
    ["5S01", "S501", "exchanged"],
    ["1234", "1324", "exchanged"],
    ["1234", "1243", "exchanged"],
    ["1234", "4231", "other"],
    ["1234", "1432", "other"],
    ["1234", "1245", "other"],
    ["1234", "1334", "other"],
    ["1234", "2143", "other"],
    ["5S01", "S505", "other"],
    ["1234", "123", "other"],
    ["0D2Z", "D022", "other"],
  ])("%s and %s: %s, either way round", (a, b, expected) => {
    expect([misreading(a, b), misreading(b, a)]).toEqual([expected, expected]);
  });
});
