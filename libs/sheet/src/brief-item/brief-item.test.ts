import { describe, expect, it } from "vitest";
import { sheetVersion1 } from "../sheet-version-1/index.ts";
import { briefItem } from "./index.ts";

const itemOf = (id: string) => {
  const found = sheetVersion1.items.find((item) => item.id === id);
  if (found === undefined) throw new Error(`no item ${id}`);
  return found;
};
const none: ReadonlySet<string> = new Set();

describe("an item of a brief", () => {
  it("is asked by the depth, in part where that is all it asks, or whole where it was chosen", () => {
    const lamps = itemOf("electrics.lamps");
    expect(briefItem(lamps, "first-look", none)).toMatchObject({ core: true, minutes: 2 });
    expect(briefItem(lamps, "first-look", none)?.positions).toHaveLength(6);
    expect(briefItem(lamps, "first-look", new Set([lamps.id]))).toEqual({
      item: lamps.id,
      core: false,
      minutes: 8,
      needs: lamps.needs,
    });
    expect(briefItem(lamps, "half-day", new Set([lamps.id]))).toMatchObject({ core: true, minutes: 8 });
  });

  it("is none where it is deeper and was not chosen", () => {
    const compression = itemOf("engine.compression");
    expect(briefItem(compression, "half-day", none)).toBeNull();
    expect(briefItem(compression, "half-day", new Set([compression.id]))).toMatchObject({ core: false });
  });
});
