import type { Item } from "@evenhand/shared/sheet";
import { describe, expect, it } from "vitest";
import { sheetVersion1 } from "../sheet-version-1/index.ts";
import { askedAt } from "./index.ts";

const itemOf = (id: string): Item => {
  const found = sheetVersion1.items.find((item) => item.id === id);
  if (found === undefined) throw new Error(`no item ${id}`);
  return found;
};

describe("what a depth asks of an item", () => {
  it("is all of it from its own depth on, and a part where a lesser depth takes that already", () => {
    const lamps = itemOf("electrics.lamps");
    expect(askedAt(lamps, "first-look")).toEqual({
      minutes: 2,
      positions: lamps.sooner?.positions,
    });
    expect(askedAt(lamps, "half-day")).toEqual({ minutes: 8 });
    expect(askedAt(lamps, "day")).toEqual({ minutes: 8 });
  });

  it("is nothing before its depth, nor where a seller alone is asked or another item asks it", () => {
    expect(askedAt(itemOf("engine.compression"), "half-day")).toBeNull();
    expect(askedAt(itemOf("engine.rebuild-claim"), "day")).toBeNull();
    expect(askedAt(itemOf("brakes.pull"), "day")).toBeNull();
  });

  it("names as the part of an item only positions it has", () => {
    const positions = new Map(
      sheetVersion1.positionSets.map((set) => [set.id, set.positions.map(({ id }) => id)]),
    );
    const wrong = sheetVersion1.items.flatMap(({ id, sooner, positions: set = "" }) =>
      (sooner?.positions ?? [])
        .filter((one) => !positions.get(set)?.includes(one))
        .map((one) => `${id}@${one}`),
    );
    expect(wrong).toEqual([]);
  });
});
