import { describe, expect, it } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import { admitted, comparisonOf, line, sheet, unasked, unseen, worded } from "../../testing/lines.ts";

const finding = (answer: Answer): Finding => ({
  item: "x.y",
  position: "",
  answer,
  firmness: "asserted",
  basis: "seen",
});
const choice = (option: string): Answer => ({ kind: "choice", option });
const grade = (value: string): Answer => ({ kind: "grade", scale: "house", value });
const mm = (...values: number[]): Answer => ({
  kind: "reading",
  unit: "mm",
  values: values.map((value) => ({ value })),
});

const saying = (answer: Answer | null) => ({
  findings: answer === null ? [] : [finding(answer)],
  scales: [],
});

const headlineOf = (entry: ReturnType<typeof line>, a: Answer | null, b: Answer | null): string => {
  const [matter] = worded(comparisonOf([entry]), { a: saying(a), b: saying(b), sheet });
  return `${matter?.headline}: ${matter?.found}`;
};

describe("headline", () => {
  it("says what was found, and what was stated", () => {
    const entry = line("brakes.lining-thickness@left-front");
    const said = headlineOf(entry, mm(10), mm(2)).replaceAll("\u00a0", " ");
    expect(said).toBe("The brakes are not safe: lining or pad thickness, left front: 2 mm (stated: 10 mm)");
  });

  it("opens with what the gravest line says by itself", () => {
    const entry = line("identity.title-holder", { severity: "halt" });
    expect(headlineOf(entry, choice("seller-in-hand"), choice("other-name"))).toMatch(
      /^The title is in another person's name: /,
    );
  });

  it("tells nobody that a thing is not as stated of which nothing was stated", () => {
    const found = { kind: "code", text: "7B 1180" } as const;
    const entry = line("identity.engine-number", {
      severity: "halt",
      outcome: "unstated",
      marks: ["by-figures"],
    });
    const silent = { ...entry, finding: { a: null, b: 0 } };
    expect(headlineOf(silent, null, found)).toMatch(/^The engine number does not fit what else was read: /);
    const paint = line("body.paint-highest@roof", { severity: "worth", outcome: "unstated" });
    expect(headlineOf({ ...paint, finding: { a: null, b: 0 } }, null, mm(0.46))).not.toMatch(/said|stated/);
  });

  it("calls nothing unsafe that is good, though less good than was said", () => {
    const entry = line("interior.belt-webbing@left-front", { severity: "repair" });
    const good = { ...entry, calls: { a: "good", b: "good" } } as const;
    expect(headlineOf(good, grade("as-new"), grade("even-wear"))).toMatch(
      /^Not as stated: seats and belts: /,
    );
  });

  it("gives the dealer credit for what he disclosed", () => {
    const entry = admitted("wheels.tire-age@left-front");
    expect(headlineOf(entry, choice("over-ten-years"), choice("over-ten-years"))).toBe(
      "The tires are not safe (disclosed): claimed tire age, left front: over ten years (as stated)",
    );
  });

  it("accuses nobody of what is only in doubt", () => {
    const entry = line("identity.engine-number", { outcome: "doubtful", severity: "worth" });
    expect(headlineOf(entry, { kind: "code", text: "3309" }, { kind: "code", text: "3809" })).toBe(
      "To be looked at again: the engine's identity: engine number: 3809 (stated: 3309)",
    );
  });

  it("does not call a car flooded whose carpets nobody was let lift", () => {
    const entry = unseen("interior.silt", { severity: "halt", reason: "not-seen-not-permitted" });
    const said = headlineOf(entry, null, { kind: "not-seen", reason: "not-permitted" });
    expect(said).toMatch(/^Nobody looked where something must come off, or leave be given: silt/);
  });

  it("says that a paper was not shown", () => {
    const entry = unseen("identity.title-holder", { severity: "halt", reason: "not-seen-not-permitted" });
    expect(headlineOf(entry, choice("seller-in-hand"), { kind: "not-seen", reason: "not-permitted" })).toBe(
      "Not shown to the inspector: title: title: not permitted (stated: in the seller's name, in hand)",
    );
  });

  it("names three and counts the rest, claims first where nobody knows", () => {
    const places = ["towers@left-front", "rails@left-front", "firewall", "radiator-support"];
    const entries = [
      ...places.map((place) => unasked(`underbody.${place}`)),
      unseen("underbody.battery-tray"),
    ];
    const reports = { findings: [finding(choice("sound"))], scales: [] };
    const [underside] = worded(comparisonOf(entries), {
      a: reports,
      b: { findings: [], scales: [] },
      sheet,
    });
    expect(`${underside?.headline}: ${underside?.found}`).toMatch(
      /on a lift: battery tray \(stated: sound\); .+; .+; and 2 more$/,
    );
  });

  it("counts what is not named by the system it belongs to, so that somebody can set about it", () => {
    const places = ["underbody.towers@left-front", "underbody.rails@left-front", "underbody.firewall"];
    const others = ["driveline.exhaust", "driveline.pinion-seal", "underbody.battery-tray"];
    const entries = [...places, ...others].map((place) => unseen(place, { severity: "halt" }));
    const [underside] = worded(comparisonOf(entries), { a: saying(null), b: saying(null), sheet });
    expect(underside?.found).toMatch(/; and 3 more: \D+ \d, \D+ \d$/);
  });
});
