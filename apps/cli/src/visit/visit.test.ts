import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { planText } from "./index.ts";

describe("the plan of a visit", () => {
  it("names nine visits and their gates, the cold start before anything that runs the engine", () => {
    const text = planText();
    expect(text.match(/^## /gm)).toHaveLength(9);
    expect(text).toMatch(/\*\*cold start\*\*[\s\S]*?carbon monoxide/);
    expect(text.indexOf("**cold start**")).toBeLessThan(text.indexOf("**running**"));
    expect(text).not.toMatch(/undefined|NaN/);
  });

  it("is what docs/visit.md holds", () => {
    const kept = readFileSync(join(import.meta.dirname, "../../../../docs/visit.md"), "utf8");
    expect(kept.trim()).toBe(planText().trim());
  });
});
