import type { CrossCheck, MakerData } from "@evenhand/shared/cross-check";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { describe, expect, it } from "vitest";
import { honest, maker, modern, overstated } from "../../testing/stories.ts";
import { singleReportChecks } from "./index.ts";

const { items } = compileSheet(sheetVersion1);

const short = (value: number): string => value.toPrecision(4);

const figuresOf = ({ figures, ranges = {} }: CrossCheck): string =>
  [
    ...Object.entries(figures).map(([name, { value }]) => `; ${name} ${short(value)}`),
    ...Object.entries(ranges).map(([name, { low, high }]) => `; ${name} ${short(low)} to ${short(high)}`),
  ].join("");

const brief = (check: CrossCheck): string => {
  const { rule, reason, reads, claim } = check;
  return `${rule} ${reason} of ${claim?.item ?? "none"}@${claim?.position ?? ""} by ${reads.length} from ${reads[0]?.item}@${reads[0]?.position}${figuresOf(check)}`;
};

const checksOf = (report: Report, data: MakerData): ReadonlySet<string> =>
  new Set(singleReportChecks(report, sheetVersion1, { maker: data }).map(brief));

/** What a change takes away from the checks and what it brings. */
const changes = (before: ReadonlySet<string>, after: ReadonlySet<string>): string[] => [
  ...Array.from(before)
    .filter((line) => !after.has(line))
    .map((line) => `  - ${line}`),
  ...Array.from(after)
    .filter((line) => !before.has(line))
    .map((line) => `  + ${line}`),
];

type Variation = { readonly name: string; readonly report: Report; readonly maker?: MakerData };

const place = ({ item, position }: Finding): string => `${item}@${position}`;
const withFinding = (report: Report, index: number, finding: Finding): Report => ({
  ...report,
  findings: report.findings.with(index, finding),
});

/** Each finding left out, each choice answered otherwise, each condition not noted. */
const findingVariations = (report: Report): Variation[] =>
  report.findings.flatMap((finding, index): Variation[] => {
    const { answer, conditions } = finding;
    const options = answer.kind === "choice" ? (items.get(finding.item)?.item.choice?.options ?? []) : [];
    return [
      {
        name: `without ${place(finding)}`,
        report: { ...report, findings: report.findings.toSpliced(index, 1) },
      },
      ...options.map(({ id }) => ({
        name: `${place(finding)} ${id}`,
        report: withFinding(report, index, { ...finding, answer: { kind: "choice", option: id } }),
      })),
      ...(conditions === undefined
        ? []
        : [
            {
              name: `${place(finding)} without conditions`,
              report: withFinding(report, index, { ...finding, conditions: undefined }),
            },
            {
              name: `${place(finding)} with conditions in words`,
              report: withFinding(report, index, {
                ...finding,
                conditions: Object.fromEntries(Object.keys(conditions).map((key) => [key, "some"])),
              }),
            },
            {
              name: `${place(finding)} with conditions turned round`,
              report: withFinding(report, index, {
                ...finding,
                conditions: Object.fromEntries(
                  Object.entries(conditions).map(([key, value]) => [
                    key,
                    typeof value === "boolean" ? !value : value,
                  ]),
                ),
              }),
            },
          ]),
    ];
  });

/** The car described otherwise, and each thing the firm entered left out. */
const carVariations = (report: Report): Variation[] => {
  const { vehicle } = report;
  const car = (name: string, more: Partial<Report["vehicle"]>): Variation => ({
    name,
    report: { ...report, vehicle: { ...vehicle, ...more } },
  });
  return [
    car("no market", { market: undefined }),
    ...["Canada", "usa", "us", "U.S.", "North America", "United States", "Mexico", "Europe", "Austria"].map(
      (market) => car(`market ${market}`, { market }),
    ),
    car("model year 1980", { modelYear: 1980 }),
    car("model year 1981", { modelYear: 1981 }),
    car("model year 2021", { modelYear: 2021 }),
    ...(["front", "rear", "all"] as const).map((driven) =>
      car(`driven ${driven}`, { form: { ...vehicle.form, driven } }),
    ),
    ...(["manual", "automatic"] as const).map((gearbox) =>
      car(`gearbox ${gearbox}`, { form: { ...vehicle.form, gearbox } }),
    ),
    car("six volts", { form: { ...vehicle.form, systemVolts: 6 } }),
    car("eight cylinders", { form: { ...vehicle.form, cylinders: 8 } }),
    { name: "no instruments named", report: { ...report, instruments: [] } },
    {
      name: "a visit in 1966",
      report: { ...report, visit: { ...report.visit, started: "1966-05-04T15:00:00Z" } },
    },
    ...Object.keys(maker).map((key) => ({
      name: `maker's ${key} not entered`,
      report,
      maker: { ...maker, [key]: undefined },
    })),
    { name: "never stamped", report, maker: { ...maker, neverStamped: ["engine"] } },
    { name: "another camshaft", report, maker: { ...maker, cam: "other" } },
    { name: "no low volume parts", report, maker: { ...maker, lowVolumeParts: ["block"] } },
    { name: "another timing", report, maker: { ...maker, timing: 2 } },
    { name: "timing to the limit", report, maker: { ...maker, timing: 10 } },
    {
      name: "a maker who asks for more",
      report,
      maker: {
        ...maker,
        oilPressure2000: 60,
        oilPressureIdle: 30,
        compressionLeast: 200,
        compressionLowestShare: 0.999,
      },
    },
    {
      name: "a maker who asks for little",
      report,
      maker: { ...maker, compressionLowestShare: 0.1, toeRear: 20, toeFront: 0.1 },
    },
  ];
};

describe("variations of a report", { timeout: 120_000 }, () => {
  it.each([
    ["honest", honest, [...findingVariations(honest), ...carVariations(honest)]],
    ["overstated", overstated, carVariations(overstated)],
    ["modern", modern, [...findingVariations(modern), ...carVariations(modern)]],
  ])("change the checks of the %s car as the golden file has it", async (name, report, variations) => {
    const before = checksOf(report, maker);
    const text = variations.map((variation) =>
      [variation.name, ...changes(before, checksOf(variation.report, variation.maker ?? maker))].join("\n"),
    );
    await expect(`${text.join("\n")}\n`).toMatchFileSnapshot(`${name}-varied.golden.txt`);
  });
});
