import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { isAskedOf } from "./places.ts";

const asked = (kind: "inspection" | "statement") =>
  new Set(sheetVersion1.items.filter((item) => isAskedOf(item, kind)).map(({ id }) => id));

test("an inspector is not asked what only a seller can claim, and nobody one fact twice", () => {
  const [inspection, statement] = [asked("inspection"), asked("statement")];
  expect([inspection.has("engine.rebuild-claim"), statement.has("engine.rebuild-claim")]).toEqual([
    false,
    true,
  ]);
  for (const id of ["brakes.pull", "electrics.power-windows", "driveline.pinion-seal"])
    expect([inspection.has(id), statement.has(id)]).toEqual([false, false]);
  expect([inspection.has("road.braking"), statement.has("road.braking")]).toEqual([true, true]);
});
