import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "../sheet-version-1/index.ts";
import { presenceWords } from "./index.ts";

const itemOf = (id: string) => sheet.items.find((item) => item.id === id);

describe("presenceWords", () => {
  it("says a circumstance in words of its kind", () => {
    const charger = itemOf("visit.battery-on-charger");
    expect(presenceWords(charger, "present")).toBe("on a charger");
    expect(presenceWords(charger, "absent")).toBe("off a charger");
    expect(presenceWords(charger, "not-known")).toBeUndefined();
    expect(presenceWords(itemOf("trunk.spare"), "absent")).toBeUndefined();
    expect(presenceWords(undefined, "present")).toBeUndefined();
  });

  it("has words for every circumstance: none is called present or absent", () => {
    const plain = sheet.items.filter(
      ({ section, presence }) => section === "visit" && presence !== undefined && presence.said === undefined,
    );
    expect(plain.map(({ id }) => id)).toEqual([]);
    const unsaid = sheet.conditions.filter(
      ({ ask, otherwise }) => ask === "yes-no" && otherwise === undefined,
    );
    expect(unsaid.map(({ id }) => id)).toEqual([]);
  });
});
