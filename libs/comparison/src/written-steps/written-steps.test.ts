import { expect, it } from "vitest";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { finding } from "../../testing/small-reports.ts";
import { writtenSteps } from "./index.ts";

const read = (item: string, unit: UnitSymbol, ...values: number[]) =>
  finding(item, { kind: "reading", unit, values: values.map((value) => ({ value })) });

it("is that of all places of an item in one unit, each unit and item by itself", () => {
  const psi = [read("engine.compression", "psi", 150), read("engine.compression", "psi", 145, 160)];
  const bar = read("engine.compression", "bar", 10.2);
  const vacuum = read("engine.vacuum", "inHg", 19);
  const horn = finding("electrics.horn", { kind: "working", value: "yes" });
  const steps = writtenSteps({ findings: [...psi, bar, vacuum, horn] });
  expect([...psi, bar, vacuum, horn].map(steps)).toEqual([5, 5, 0.2, 1, 0]);
  expect(steps(read("engine.timing", "deg", 8))).toBe(0);
});
