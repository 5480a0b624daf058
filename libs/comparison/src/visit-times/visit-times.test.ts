import { describe, expect, it } from "vitest";
import { finding, inspection } from "../../testing/small-reports.ts";
import { visitTimes } from "./index.ts";

const report = inspection([]);
const at = (time?: string) => finding("electrics.horn", { kind: "working", value: "yes" }, { time });
const between = (a?: string, b?: string) => visitTimes(at(a), report, at(b), report);

describe("visitTimes", () => {
  it("takes up to twelve hours for one day, whatever the date", () => {
    expect(between("2026-05-04T20:00:00Z", "2026-05-05T08:00:00Z")).toEqual({
      differentDays: false,
      later: "b",
    });
    expect(between("2026-05-04T20:00:00Z", "2026-05-05T08:00:01Z")).toEqual({
      differentDays: true,
      later: "b",
    });
    expect(between("2026-05-05T08:00:01Z", "2026-05-04T20:00:00Z")).toEqual({
      differentDays: true,
      later: "a",
    });
  });

  it("takes the start of the visit for a finding without a time", () => {
    expect(between(undefined, "2026-05-12T16:00:00Z").later).toBe("b");
    expect(between("2026-05-12T16:00:00Z").later).toBe("a");
    expect(between().later).toBeNull();
  });
});
