import { array, assert, constant, jsonValue, oneof, property, record } from "fast-check";
import { expect, test } from "vitest";
import { StoredHeader } from "@evenhand/shared/http/reports";
import { readableHeader } from "./index.ts";

const good = {
  sheet: { id: "evenhand", version: 1 },
  visit: { started: "2026-05-04T15:00:00Z", zone: "UTC" },
  instruments: [{ id: "tread", name: "Tread gauge" }],
  persons: [],
  scales: [],
};

test("a header that holds is read as it stands", () => {
  expect(readableHeader(good)).toEqual({ header: good, leftOut: [] });
});

test("a member that does not hold is left out and named, its neighbors stay", () => {
  const { header, leftOut } = readableHeader({
    ...good,
    instruments: [{ id: "", name: "" }, ...good.instruments],
    terms: 7,
  });
  expect(header.instruments).toEqual(good.instruments);
  expect(leftOut).toEqual(["terms", "instruments/0"]);
});

test("whatever is stored, what is read holds", () => {
  const part = oneof(jsonValue(), array(oneof(jsonValue(), constant(good.instruments[0]))));
  const parts = { sheet: part, visit: part, terms: part, instruments: part, persons: part, scales: part };
  const stored = oneof(jsonValue(), record(parts, { requiredKeys: [] }));
  assert(
    property(stored, (raw) => {
      expect(StoredHeader.safeParse(readableHeader(raw).header).error).toBeUndefined();
    }),
    { numRuns: 2_000 },
  );
});
