import { expect, test } from "vitest";
import { carriedHeader } from "./index.ts";

type Named = Parameters<typeof carriedHeader>[0];
const of = (...persons: object[]): Named =>
  JSON.parse(JSON.stringify({ persons, instruments: [], scales: [] }));

test("what earlier findings name stays what it was, and what is new stands beside it", () => {
  const [ines, another, rowan] = [
    { id: "p1", name: "Ines" },
    { id: "p1", name: "Another" },
    { id: "p2", name: "Rowan" },
  ];
  expect(carriedHeader(of(ines), of(another, rowan))).toEqual(of(ines, rowan));
});
