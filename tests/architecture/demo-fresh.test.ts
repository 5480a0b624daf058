import { readFileSync, readdirSync } from "node:fs";
import { checkReport } from "@evenhand/sheet/check-report";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { DemoScenario } from "@evenhand/shared/demo-scenario";
import { expect, test } from "vitest";
import { demoFiles } from "../../fixtures/demo/generate/files.ts";

const folder = new URL("../../fixtures/demo/", import.meta.url);
const text = (path: string): string => readFileSync(new URL(path, folder), "utf8");
const scenario = DemoScenario.parse(JSON.parse(text("scenario.json")));

test("the committed demo is what its script writes", () => {
  const made = demoFiles();
  const there = readdirSync(new URL("reports/", folder)).map((name) => `reports/${name}`);
  expect([...made.keys()].sort()).toEqual([...there, "cost-table.json", "scenario.json"].sort());
  expect([...made].filter(([path, contents]) => text(path) !== contents).map(([path]) => path)).toEqual([]);
});

test.each(scenario.reports.map(({ file }) => file))(
  "%s is a report without a problem or an advisory",
  (file) => {
    const check = checkReport(JSON.parse(text(file)), sheetVersion1);
    expect(check.ok ? [] : check.problems).toEqual([]);
    expect(check.advisories).toEqual([]);
  },
);

const keys = (list: readonly { readonly key: string }[]): Set<string> => new Set(list.map(({ key }) => key));

test("every key the scenario names is there", () => {
  const [organizations, accounts, vehicles, reports, orders, comparisons] = [
    keys(scenario.organizations),
    keys(scenario.accounts),
    keys(scenario.vehicles),
    keys(scenario.reports),
    keys(scenario.orders),
    keys(scenario.comparisons),
  ];
  const named: readonly (readonly [ReadonlySet<string>, readonly (string | undefined)[]])[] = [
    [
      organizations,
      scenario.accounts.flatMap(({ memberships }) => memberships.map(({ organization }) => organization)),
    ],
    [
      organizations,
      [
        ...scenario.vehicles.map(({ dealer }) => dealer),
        ...scenario.orders.map(({ inspector }) => inspector),
      ],
    ],
    [
      accounts,
      [...scenario.vehicles, ...scenario.reports, ...scenario.releases, ...scenario.summaries].map(
        ({ by }) => by,
      ),
    ],
    [accounts, [...scenario.orders.map(({ buyer }) => buyer), scenario.mainCase.viewer]],
    [vehicles, [...scenario.reports, ...scenario.orders].map(({ vehicle }) => vehicle)],
    [
      reports,
      [
        ...scenario.orders.map(({ statement }) => statement),
        ...scenario.comparisons.flatMap(({ a, b }) => [a, b]),
      ],
    ],
    [
      new Set([...orders, ...keys(scenario.visits)]),
      [...scenario.comparisons, ...scenario.reports].flatMap(({ order }) => order ?? []),
    ],
    [reports, scenario.visits.map(({ begun }) => begun?.report)],
    [keys(scenario.calendars), scenario.visits.map(({ calendar }) => calendar)],
    [
      vehicles,
      [...scenario.visits, ...scenario.questions, ...scenario.complaints].map(({ vehicle }) => vehicle),
    ],
    [
      accounts,
      [
        ...[...scenario.sites, ...scenario.calendars, ...scenario.questions, ...scenario.complaints].map(
          ({ by }) => by,
        ),
        ...scenario.visits.flatMap(({ buyer, moves, begun }) => [
          buyer,
          ...moves.map(({ by }) => by),
          begun?.by,
        ]),
      ],
    ],
    [comparisons, [...scenario.releases, ...scenario.summaries].map(({ comparison }) => comparison)],
    [comparisons, [scenario.mainCase.comparison]],
  ];
  for (const [known, names] of named) {
    expect(names.filter((name) => name !== undefined && !known.has(name))).toEqual([]);
  }
});

test("two dealers, three inspectors, three buyers and six cars, each at its stage", () => {
  const ofKind = (kind: string): number => scenario.organizations.filter((one) => one.kind === kind).length;
  expect([ofKind("dealer"), ofKind("inspector"), ofKind("buyer"), scenario.vehicles.length]).toEqual([
    2, 3, 3, 6,
  ]);
  expect(new Set(scenario.orders.map(({ state }) => state))).toEqual(new Set(["reported"]));
  expect(scenario.visits.map(({ moves, begun }) => moves.at(-1)?.move ?? begun?.by ?? "asked")).toEqual([
    "confirm",
    "confirm",
    "accept",
    "asked",
    "cancel",
  ]);
  expect(scenario.reports.filter(({ state }) => state === "draft").map(({ kind }) => kind)).toEqual([
    "statement",
    "inspection",
  ]);
});

test("pairs hold 150 findings or more on each side, another scale, other units, hedges and hearsay", () => {
  for (const { a, b } of scenario.comparisons) {
    const [stated, found] = [a, b].map((key) => {
      const file = scenario.reports.find((report) => report.key === key)?.file ?? "";
      const check = checkReport(JSON.parse(text(file)), sheetVersion1);
      if (!check.ok) throw new Error(file);
      return check.report;
    });
    expect(Math.min(stated?.findings.length ?? 0, found?.findings.length ?? 0)).toBeGreaterThanOrEqual(150);
    expect(new Set(stated?.findings.map(({ firmness }) => firmness)).size).toBe(3);
  }
});
