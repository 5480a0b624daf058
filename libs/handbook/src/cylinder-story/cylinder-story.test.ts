import { describe, expect, it } from "vitest";
import { cylinderStory } from "./index.ts";
import type { CylinderState } from "./index.ts";

const tight = { cylinder: 1, compression: "normal", leak: "tight" } as const;
const leaking = { cylinder: 2, compression: "low", leak: "leaks" } as const;
const tell = (
  cylinders: readonly CylinderState[],
  more: Omit<Parameters<typeof cylinderStory>[0], "cylinders"> = {},
) => cylinderStory({ cylinders, ...more });

const into = (cylinder: number, more: Partial<CylinderState> = {}): CylinderState => ({
  cylinder,
  compression: "low",
  leak: "leaks",
  escapes: ["neighbor"],
  ...more,
});

describe("cylinderStory", () => {
  it("is one story where low leaks and tight is not low", () => {
    expect(tell([tight, leaking]).reason).toBe("one-story");
    expect(tell([tight, { ...leaking, escapes: ["coolant"] }], { coolantGas: "present" }).reason).toBe(
      "one-story",
    );
    expect(tell([tight, leaking], { coolantGas: "absent" }).reason).toBe("one-story");
  });

  it("names every cylinder that contradicts itself", () => {
    const result = tell([
      tight,
      { ...leaking, leak: "tight" },
      { cylinder: 4, compression: "low", leak: "tight" },
    ]);
    expect(result).toMatchObject({ reason: "low-but-tight", words: { cylinders: "2, 4" } });
    expect(tell([tight, { ...leaking, compression: "normal" }])).toMatchObject({
      reason: "leaks-but-not-low",
      words: { cylinders: "2" },
    });
  });

  it("wants air in the coolant and gas in the coolant together", () => {
    expect(tell([{ ...leaking, escapes: ["intake", "coolant"] }], { coolantGas: "absent" })).toMatchObject({
      reason: "escape-without-gas",
      words: { cylinders: "2" },
    });
    expect(tell([tight, leaking], { coolantGas: "present" }).reason).toBe("gas-without-escape");
    expect(tell([{ ...leaking, escapes: ["coolant"] }]).reason).toBe("one-story");
    expect(tell([tight, { cylinder: 2, leak: "unclear" }], { coolantGas: "present" }).reason).toBe(
      "not-clear",
    );
    expect(tell([tight, { cylinder: 2, compression: "normal" }], { coolantGas: "present" }).reason).toBe(
      "one-story",
    );
    expect(tell([], { coolantGas: "present" }).reason).toBe("too-few");
  });

  it("sees a gasket only between neighbors that are low and leak into each other", () => {
    const neighbors = [
      [1, 2],
      [3, 4],
    ] as const;
    expect(tell([into(1), into(2)], { neighbors })).toMatchObject({
      reason: "gasket-between",
      words: { cylinders: "1 and 2" },
    });
    expect(tell([into(2), into(3)], { neighbors }).reason).toBe("one-story");
    expect(tell([into(1), into(2, { escapes: ["intake"] })], { neighbors }).reason).toBe("one-story");
    expect(tell([into(1), into(2, { compression: undefined })], { neighbors }).reason).toBe("one-story");
    expect(tell([into(1), into(2)]).reason).toBe("one-story");
  });

  it("needs two tests of one cylinder, and clear ones", () => {
    expect(
      tell([
        { cylinder: 1, compression: "low" },
        { cylinder: 2, leak: "tight" },
      ]).reason,
    ).toBe("too-few");
    expect(tell([{ cylinder: 2, leak: "tight" }], { coolantGas: "absent" }).reason).toBe("one-story");
    expect(tell([{ cylinder: 2, leak: "tight" }]).reason).toBe("too-few");
    expect(tell([tight, { ...leaking, leak: "unclear" }])).toMatchObject({
      reason: "not-clear",
      words: { cylinders: "2" },
    });
    expect(tell([tight, { ...leaking, compression: "unclear" }])).toMatchObject({
      reason: "not-clear",
      words: { cylinders: "2" },
    });
    expect(
      tell([
        { ...leaking, compression: "unclear" },
        { ...leaking, cylinder: 3, leak: "tight" },
      ]).reason,
    ).toBe("low-but-tight");
  });
});
