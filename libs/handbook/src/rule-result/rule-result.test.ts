import { describe, expect, it } from "vitest";
import { figure } from "./index.ts";

describe("figure", () => {
  it("leaves out an uncertainty of 0", () => {
    expect([figure(1), figure(1, "mm", 0), figure(1, "mm", 0.5)]).toEqual([
      { value: 1, unit: "1" },
      { value: 1, unit: "mm" },
      { value: 1, unit: "mm", standardUncertainty: 0.5 },
    ]);
  });
});
