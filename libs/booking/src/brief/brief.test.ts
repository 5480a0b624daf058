import { describe, expect, it } from "vitest";
import type { BriefItem } from "@evenhand/shared/booking";
import { DAY, HOUR, MONDAY } from "../../testing/builders.ts";
import { type Brief, type BriefFacts, briefTotals, decideBrief } from "./index.ts";

const core: BriefItem = { item: "brakes.lines", core: true, minutes: 10, needs: ["lift"] };
const chosen: BriefItem = { item: "body.paint", core: false, minutes: 30, needs: ["daylight"] };
const extra: BriefItem = { item: "trunk.floor", core: false, minutes: 5, needs: ["lift", "permission"] };
const brief: Brief = { version: 3, items: [core, chosen], proposed: null };
const now = MONDAY;
const facts = (more: Partial<BriefFacts> = {}): BriefFacts => ({
  now,
  start: now + 3 * DAY,
  refusedHour: [],
  ...more,
});
const propose = (...items: BriefItem[]) => ({ kind: "propose", by: "buyer", items }) as const;
const AGREE = { kind: "agree", by: "inspector" } as const;
const proposed: Brief = { ...brief, proposed: { items: [core, extra], at: now } };

describe("a brief", () => {
  it("adds up minutes, core and chosen, and by need", () => {
    expect(briefTotals([core, chosen, extra])).toEqual({
      minutes: 45,
      coreMinutes: 10,
      chosenMinutes: 35,
      byNeed: { lift: 15, daylight: 30, permission: 5 },
    });
  });

  it("changes at once while no visit is booked", () => {
    expect(decideBrief(brief, propose(core, extra), facts({ start: null }))).toEqual({
      kind: "changed",
      brief: { version: 4, items: [core, extra], proposed: null },
    });
  });

  it("waits for the inspector once one is, and stands as it was until then", () => {
    const asked = decideBrief(brief, propose(core, extra), facts());
    expect(asked).toEqual({ kind: "changed", brief: proposed });
    expect(decideBrief(proposed, AGREE, facts())).toEqual({
      kind: "changed",
      brief: { version: 4, items: [core, extra], proposed: null },
    });
    expect(decideBrief(proposed, { kind: "refuse", by: "inspector" }, facts())).toEqual({
      kind: "changed",
      brief,
    });
    expect(decideBrief(proposed, { kind: "withdraw", by: "buyer" }, facts())).toEqual({
      kind: "changed",
      brief,
    });
  });

  it("takes changes until a day before, to the millisecond", () => {
    expect(decideBrief(brief, propose(core, extra), facts({ start: now + DAY })).kind).toBe("changed");
    const late = facts({ start: now + DAY - 1 });
    const refused = { kind: "refused", refusal: { code: "too-late", until: now - 1 } };
    expect(decideBrief(brief, propose(core, extra), late)).toEqual(refused);
    expect(decideBrief(proposed, AGREE, late)).toEqual(refused);
    expect(decideBrief(proposed, { kind: "withdraw", by: "buyer" }, late).kind).toBe("changed");
  });

  it.each([
    ["core-left-out", propose(chosen), { code: "core-left-out", items: ["brakes.lines"] }],
    ["nothing-changed", propose(chosen, core), { code: "nothing-changed" }],
    ["item-twice", propose(core, extra, extra), { code: "item-twice", items: ["trunk.floor"] }],
    ["nothing-proposed", AGREE, { code: "nothing-proposed" }],
  ])("is refused: %s", (_, move, refusal) =>
    expect(decideBrief(brief, move, facts())).toEqual({ kind: "refused", refusal }),
  );

  it("is refused where the booked hour no longer holds it, and asked again on agreeing", () => {
    const reasons = [{ code: "inspector-taken", taken: { start: now, end: now + HOUR } }] as const;
    const refused = { kind: "refused", refusal: { code: "hour-does-not-hold-it", reasons } };
    expect(decideBrief(brief, propose(core, chosen, extra), facts({ refusedHour: reasons }))).toEqual(
      refused,
    );
    expect(decideBrief(proposed, AGREE, facts({ refusedHour: reasons }))).toEqual(refused);
  });
});
