import { describe, expect, it } from "vitest";
import { GATE_SUBJECTS, planVisit } from "../visit-plan/index.ts";
import { GATE_OF_ITEM, toVisitItem } from "./index.ts";

describe("items of the sheet on a visit", () => {
  it("take minutes, needs and stage from the sheet, and the gate they speak to", () => {
    expect(
      toVisitItem({ id: "driveline.leaks-after", minutes: 3, needs: ["lift"], stage: "second-lift" }),
    ).toEqual({ item: "driveline.leaks-after", minutes: 3, needs: ["lift"], stage: "second-lift" });
    expect(toVisitItem({ id: "wheels.fixings", minutes: 2, needs: ["lift"], stage: "lift" })).toEqual({
      item: "wheels.fixings",
      minutes: 2,
      needs: ["lift"],
      stage: "first-lift",
      gate: ["wheel-fixings"],
    });
  });

  it("speak to every subject of the gate between them", () => {
    expect(GATE_SUBJECTS.filter((subject) => !Object.values(GATE_OF_ITEM).flat().includes(subject))).toEqual(
      [],
    );
  });

  it("open the road together", () => {
    const gate = Object.keys(GATE_OF_ITEM).map((id) =>
      toVisitItem({ id, minutes: 2, needs: ["lift"], stage: "lift" }),
    );
    const road = toVisitItem({ id: "road.tracking", minutes: 10, needs: ["road"], stage: "road" });
    expect(planVisit([{ car: "c", items: [...gate, road] }]).kind).toBe("planned");
  });
});
