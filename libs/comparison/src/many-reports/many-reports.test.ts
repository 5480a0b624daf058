import { describe, expect, it } from "vitest";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { manyReports } from "./index.ts";

const horn = (value: "yes" | "no" | "intermittent"): Finding =>
  finding("electrics.horn", { kind: "working", value });
const unseen = finding("electrics.horn", { kind: "not-seen", reason: "no-time" });
const on = (day: number): Partial<Report> => ({
  visit: { started: `2026-05-0${day}T15:00:00Z`, zone: "America/Chicago" },
});
const dealer = (day: number, ...findings: Finding[]) => statement(findings, on(day));
const inspector = (day: number, ...findings: Finding[]) => inspection(findings, on(day));
const other = (day: number, ...findings: Finding[]) =>
  inspection(findings, { ...on(day), author: { organization: "Second Look", role: "inspector" } });
const rowOf = (...reports: Report[]) => manyReports(reports, sheet).rows[0];

const floor = (kind: string) => finding("trunk.floor", { kind: "faults", found: [{ kind }], denied: [] });
const radio = (value: "yes" | "intermittent") => finding("electrics.radio", { kind: "working", value });
const lamp = (position: string) =>
  finding("electrics.lamps", { kind: "working", value: "yes" }, { position });
const floors = (...kinds: string[]): Finding =>
  finding("trunk.floor", { kind: "faults", found: kinds.map((kind) => ({ kind })), denied: [] });

const denying = (kind: string): Finding =>
  finding("trunk.floor", { kind: "faults", found: [], denied: [kind] });
const outcome = (a: Finding, b: Finding) => rowOf(dealer(1, a), inspector(2, b))?.between[0]?.outcome;

describe("who says what", () => {
  it("never lets two reports of one dealer outvote an inspector", () => {
    const row = rowOf(dealer(1, horn("yes")), dealer(2, horn("yes")), inspector(3, horn("no")));
    expect(row).toMatchObject({ state: "disputed", between: [{ a: 1, b: 2, outcome: "differ" }] });
    expect(row?.within).toEqual([{ a: 0, b: 1, outcome: "agree" }]);
  });

  it("lets a firm speak by its latest report, and shows where it changed its mind", () => {
    const row = rowOf(dealer(2, horn("no")), dealer(1, horn("yes")), inspector(3, horn("no")));
    expect(row).toMatchObject({ state: "agreed", between: [{ a: 0, b: 2, outcome: "agree" }] });
    expect(row?.within).toEqual([{ a: 1, b: 0, outcome: "differ" }]);
  });

  it("passes over what a firm's latest report does not claim", () => {
    const row = rowOf(dealer(1, horn("yes")), dealer(2, unseen), inspector(3, horn("no")));
    expect(row).toMatchObject({ state: "disputed", between: [{ a: 0, b: 2 }], within: [] });
  });

  it.each([
    ["one-party", [dealer(1, horn("yes")), inspector(2)]],
    ["one-party", [dealer(1, horn("yes")), inspector(2, unseen)]],
    ["agreed", [dealer(1, horn("yes")), inspector(2, horn("yes")), other(3, horn("yes"))]],
    ["disputed", [dealer(1, horn("yes")), inspector(2, horn("yes")), other(3, horn("no"))]],
    ["in-doubt", [dealer(1, horn("yes")), inspector(2, horn("intermittent"))]],
  ] as const)("%s: %#", (state, reports) => {
    expect(rowOf(...reports)?.state).toBe(state);
  });

  it("is in doubt where one party found what another said nothing of, or is doubtful", () => {
    const row = rowOf(dealer(1, floor("dent")), inspector(2, floor("dent")), other(3, floor("corrosion")));
    expect(row?.state).toBe("in-doubt");
    expect(rowOf(dealer(1, radio("yes")), inspector(2, radio("intermittent")))?.state).toBe("in-doubt");
  });

  it("is in doubt where all there is is something another said nothing of", () => {
    const row = rowOf(dealer(1, floors("dent")), inspector(2, floors("dent", "corrosion")));
    expect(row).toMatchObject({ state: "in-doubt", between: [{ outcome: "unstated" }] });
  });

  it("takes the firmest of a place's outcomes, wherever it stands among them", () => {
    expect(outcome(denying("corrosion"), floors("corrosion", "dent"))).toBe("differ");
    expect(outcome(denying("dent"), floors("corrosion", "dent"))).toBe("differ");
    expect(outcome(floors("dent"), floors("corrosion"))).toBe("doubtful");
    expect(outcome(floors("corrosion"), floors("dent"))).toBe("doubtful");
  });

  it("keeps the order given for visits that began at one moment", () => {
    expect(
      manyReports([inspector(1), dealer(1), other(1)], sheet).parties.flatMap(({ reports }) => reports),
    ).toEqual([0, 1, 2]);
  });

  it("says what each report says, by report in the order given", () => {
    const [first, second] = [
      dealer(2, unseen),
      inspector(1, finding("electrics.radio", { kind: "working", value: "yes" }), horn("no")),
    ];
    expect(manyReports([first, second, other(3)], sheet)).toMatchObject({
      parties: [
        { organization: "Quiet Hill Inspection", role: "inspector", reports: [1] },
        { organization: "Larkspur Motor House", role: "dealer", reports: [0] },
        { organization: "Second Look", role: "inspector", reports: [2] },
      ],
      rows: [
        {
          item: "electrics.horn",
          says: [
            { kind: "statement", finding: 0, claims: false, bad: false },
            { kind: "inspection", finding: 1, claims: true, bad: true },
            null,
          ],
        },
        {
          item: "electrics.radio",
          says: [null, { finding: 0, claims: true, bad: false }, null],
        },
      ],
    });
  });

  it("goes by the sheet's order of items and positions", () => {
    const lamps =
      sheet.items
        .get("electrics.lamps")
        ?.positionSet?.positions.map(({ id }) => id)
        .slice(0, 3) ?? [];
    const { rows } = manyReports([dealer(1, horn("yes"), ...lamps.toReversed().map(lamp))], sheet);
    expect(rows.map(({ position }) => position)).toEqual([...lamps, ""]);
  });
});
