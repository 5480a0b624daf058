import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { VehicleForm } from "@evenhand/shared/report";
import { isBadCall, SEVERITIES, severityRank } from "@evenhand/shared/severity";
import { arbitraryReports } from "../../testing/arbitrary-report.ts";
import { everythingBad } from "../../testing/planted.ts";
import type { Planted } from "../../testing/planted.ts";
import { form, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { analyze } from "./index.ts";

const forms: readonly VehicleForm[] = [
  form,
  {
    ...form,
    body: "convertible",
    doors: 4,
    cylinders: 8,
    construction: "unit-body",
    gearbox: "automatic",
    systemVolts: 6,
    brakes: { front: "drum", rear: "disc" },
    frontPivots: "king-pins",
  },
];
const plants = new Map(forms.map((each) => [each, everythingBad(each)]));
const car = (vehicleForm: VehicleForm) => ({ vehicle: { ...statement([]).vehicle, form: vehicleForm } });
const keyOf = ({ item, position }: Pick<Finding, "item" | "position">): string => `${item} ${position}`;

const rankOf = ({ severity }: Entry): number =>
  severity === null ? SEVERITIES.length : severityRank(severity);

/** What is wrong with how a planted finding is shown; nothing where it stands as it should. */
const wrongWith = ({ entries, order }: Comparison, { finding, least, what }: Planted): string[] => {
  const at = entries.findIndex(
    (entry) => keyOf(entry) === keyOf(finding) && entry.finding.b !== null && isBadCall(entry.calls.b),
  );
  const entry = entries[at];
  if (entry === undefined) return [`${what}: no line calls it bad`];
  const says = (isWrong: boolean, text: string): string[] => (isWrong ? [`${what}: ${text}`] : []);
  const place = order.indexOf(at);
  return [
    ...says(entry.coverageOnly === true, "folded"),
    ...says(entry.outcome !== "unstated", `${entry.outcome}, not unstated`),
    ...says(entry.marks.includes("no-yardstick"), "no yardstick"),
    ...says(rankOf(entry) > severityRank(least), `${entry.severity}, not ${least}`),
    ...says(place < 0, "not in the order"),
    ...says(
      order.slice(0, place).some((index) => rankOf(entries[index] ?? entry) > rankOf(entry)),
      "after something milder",
    ),
  ];
};

/** As many reports as a place has bad answers, each with the next one at every place. */
const rounds = (all: readonly Planted[]): Planted[][] => {
  const byPlace = [...Map.groupBy(all, ({ finding }) => keyOf(finding)).values()];
  const most = Math.max(...byPlace.map((one) => one.length));
  return Array.from({ length: most }, (_, round) => byPlace.flatMap((one) => one[round] ?? []));
};

const findingsOf = (planted: readonly Planted[]): Finding[] => {
  const findings = new Map<string, Finding>();
  for (const { beside } of planted) for (const each of beside) findings.set(keyOf(each), each);
  for (const { finding } of planted) findings.set(keyOf(finding), finding);
  return [...findings.values()];
};

describe("a silent dealer, and something bad of every kind at every place", () => {
  test("there is much to plant", () => {
    expect(Math.min(...[...plants.values()].map((each) => each.length))).toBeGreaterThan(1000);
  });

  test.each(forms)("every one is a line of its own, at its severity, in the order ($body)", (vehicleForm) => {
    const wrong = rounds(plants.get(vehicleForm) ?? []).flatMap((planted) => {
      const comparison = analyze(
        statement([], car(vehicleForm)),
        inspection(findingsOf(planted), car(vehicleForm)),
        sheet,
      );
      return planted.flatMap((each) => wrongWith(comparison, each));
    });
    expect([...new Set(wrong)]).toEqual([]);
  });

  test("also alone among whatever else was stated and found", () => {
    const one = fc.constantFrom(...forms).chain((vehicleForm) =>
      fc.record({
        vehicleForm: fc.constant(vehicleForm),
        planted: fc.constantFrom(...(plants.get(vehicleForm) ?? [])),
        reports: arbitraryReports(8),
      }),
    );
    fc.assert(
      fc.property(one, ({ vehicleForm, planted, reports: { a, b } }) => {
        const mine = findingsOf([planted]);
        const places = new Set(mine.map(keyOf));
        const others = (findings: readonly Finding[]) => findings.filter((each) => !places.has(keyOf(each)));
        // Silent on the other side of the car, too: what is disclosed there may be left taken for right.
        const items = new Set(mine.map(({ item }) => item));
        const elsewhere = a.findings.filter(({ item }) => !items.has(item));
        const comparison = analyze(
          { ...a, ...car(vehicleForm), findings: elsewhere },
          { ...b, ...car(vehicleForm), findings: [...others(b.findings), ...mine] },
          sheet,
        );
        expect(wrongWith(comparison, planted)).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });
});
