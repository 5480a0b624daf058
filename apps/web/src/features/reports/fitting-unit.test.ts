import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { usualUnit } from "./fitting-instrument.ts";

const tread = sheetVersion1.items.find(({ id }) => id === "wheels.tread-depth");
if (tread === undefined) throw new Error("the sheet asks for tread");
const gauge = (unit: "mm" | "V") => ({ id: "g", name: "Gauge", resolution: { value: 0.1, unit } });

test("a reading is typed in the unit the gauge shows, then in the one it was read in last", () => {
  expect(usualUnit(tread, undefined, undefined)).toBe("1/32in");
  expect(usualUnit(tread, gauge("mm"), undefined)).toBe("mm");
  expect(usualUnit(tread, gauge("V"), undefined)).toBe("1/32in");
  const last = { answer: { kind: "reading", unit: "in", values: [{ value: 0.2 }] } } as const;
  expect(usualUnit(tread, gauge("mm"), { answer: { ...last.answer, values: [...last.answer.values] } })).toBe(
    "in",
  );
});
