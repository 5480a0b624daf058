// Source: 49 CFR 571.116, as fixtures/published/cfr49-571-116.json cites and marks it.
import { expect, it } from "vitest";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import published from "../../fixtures/published/cfr49-571-116.json" with { type: "json" };

it("brake fluid is judged by the least wet boiling point of its grade, and said to be by practice", () => {
  const alarms =
    sheetVersion1.items.find(({ id }) => id === "brakes.fluid-boiling-point")?.reading?.alarms ?? [];
  const byGrade = alarms.find(({ byOption }) => byOption !== undefined);
  expect(byGrade?.byOption?.rows.map(({ option, value }) => ({ grade: option, degC: value }))).toEqual(
    published.rows,
  );
  expect(byGrade?.source.kind).toBe("common-practice");
});
