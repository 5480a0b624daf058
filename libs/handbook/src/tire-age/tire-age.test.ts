import { describe, expect, it } from "vitest";
import { dayOf } from "../day/index.ts";
import { tireAge } from "./index.ts";

// Week 25 of 2020 ran from 21 to 27 June; six years of 365.2425 days are 2,191.455 days.
const made = dayOf(2020, 6, 21);

describe("tireAge", () => {
  it.each([
    [made + 2191, "young"],
    [made + 2192, "some-readings"],
    [made + 6 + 2191, "some-readings"],
    [made + 6 + 2192, "caution-age"],
    [made + 3652, "caution-age"],
    [made + 6 + 3652, "caution-age"],
    [made + 6 + 3653, "replace-age"],
  ])("on day %i: %s", (visit, reason) => {
    expect(tireAge({ number: "2520", visit }).reason).toBe(reason);
  });

  it("breaks only on the age that every reading has", () => {
    const short = tireAge({ number: "0VNEHK2521", visit: dayOf(2026, 5, 4) });
    expect(short.reason).toBe("some-readings");
    expect(short.alternatives).toEqual(["2021", "1971", "1981", "1991"]);
    expect(tireAge({ number: "2521", visit: dayOf(2026, 5, 4) }).alternatives).toEqual([]);
  });

  it("takes the firm's ages", () => {
    const firm = { "tire-age.caution-years": 3, "tire-age.replace-years": 5 };
    expect(tireAge({ number: "2520", visit: dayOf(2026, 5, 4) }, firm).reason).toBe("replace-age");
    expect(tireAge({ number: "2522", visit: dayOf(2026, 5, 4) }, firm).reason).toBe("caution-age");
  });
});
