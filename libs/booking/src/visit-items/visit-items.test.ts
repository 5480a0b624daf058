import { describe, expect, it } from "vitest";
import { GATE_SUBJECTS, planVisit, stageOf } from "../visit-plan/index.ts";
import { GATE_OF_ITEM, STAGE_OF_ITEM, toVisitItem } from "./index.ts";

describe("items of the sheet on a visit", () => {
  it("take stage and gate where their needs do not tell", () => {
    expect(toVisitItem({ id: "driveline.leaks-after", minutes: 3, needs: ["lift"] })).toEqual({
      item: "driveline.leaks-after",
      minutes: 3,
      needs: ["lift"],
      stage: "second-lift",
    });
    expect(toVisitItem({ id: "wheels.fixings", minutes: 2, needs: ["lift"] }).gate).toEqual([
      "wheel-fixings",
    ]);
    expect(toVisitItem({ id: "papers.title", minutes: 5, needs: [] })).toEqual({
      item: "papers.title",
      minutes: 5,
      needs: [],
    });
  });

  it("speak to every subject of the gate between them", () => {
    expect(GATE_SUBJECTS.filter((subject) => !Object.values(GATE_OF_ITEM).flat().includes(subject))).toEqual(
      [],
    );
  });

  it("open the road together", () => {
    const gate = Object.keys(GATE_OF_ITEM).map((id) => toVisitItem({ id, minutes: 2, needs: ["lift"] }));
    const road = toVisitItem({ id: "road.tracking", minutes: 10, needs: ["road"] });
    expect(planVisit([{ car: "c", items: [...gate, road] }]).kind).toBe("planned");
  });

  it("stand at stages that give what they need", () => {
    const items = Object.entries(STAGE_OF_ITEM).map(
      ([id, stage]) => [toVisitItem({ id, minutes: 1, needs: [] }), stage] as const,
    );
    for (const [item, stage] of items) expect(stageOf(item)).toBe(stage);
  });
});
