import { describe, expect, it } from "vitest";
import { isHit } from "./matters.ts";
import { runJudged } from "./index.ts";
import { readJudged } from "./read.ts";

describe("cases judged beforehand", () => {
  const { total, matters } = runJudged(
    readJudged(new URL("../../../../fixtures/judged", import.meta.url).pathname),
  );

  it("hold a judge's matters among the first twelve, and the first of either judgment first", () => {
    expect(total.matters.of).toBeGreaterThan(50);
    expect(matters.filter((one) => !isHit(one)).length).toBeLessThanOrEqual(0.05 * total.matters.of);
    expect(total.first).toEqual({ of: 3, hit: 3 });
  });

  it("are near the judges line by line, and comfort falsely nowhere", () => {
    expect(total.nearEither / total.twice).toBeGreaterThanOrEqual(0.97);
    expect(total.nearOnce / total.once).toBeGreaterThanOrEqual(0.9);
    expect(total.comfort).toBe(0);
    expect(total.charge / total.rows).toBeLessThanOrEqual(0.02);
    expect(total.gate.right).toBe(total.gate.of);
  });
});
