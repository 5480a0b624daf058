import type { RoadClearance } from "@evenhand/shared/http/booking";
import { expect, test } from "vitest";
import { clearanceOf, typedOf } from "./road-papers.ts";

const zone = "America/Denver";
const now = "2026-12-02T17:30:00Z";
const road: RoadClearance = {
  consent: { by: "Ilse Brandvold", signedAt: "2026-12-01T16:00:00Z" },
  insurance: { reference: "policy 4417", validUntil: "2027-01-01T06:59:00Z" },
  plates: { reference: "dealer plate", validUntil: null },
  damageBorneBy: "dealer",
};

test("what is recorded and typed over unchanged is recorded the same", () => {
  const typed = typedOf(zone, road, now);
  expect(typed).toMatchObject({ insuranceUntil: "2026-12-31", platesUntil: "" });
  expect(clearanceOf(typed, zone)).toEqual(road);
});

test("nothing recorded is begun with a consent of this minute, and sent as nothing", () => {
  const typed = typedOf(zone, null, now);
  expect(typed.signed).toMatch(/^2026-12-02T10:30/);
  expect(clearanceOf(typed, zone)).toEqual({
    consent: null,
    insurance: null,
    plates: null,
    damageBorneBy: null,
  });
});

test("a consent without its hour is none, and a name of blanks names no paper", () => {
  const typed = { ...typedOf(zone, road, now), signed: "", plates: "  " };
  expect(clearanceOf(typed, zone)).toMatchObject({ consent: null, plates: null });
});
