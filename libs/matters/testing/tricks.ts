import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { Instrument, Report } from "@evenhand/shared/report";
import { houseGrades, houseStep } from "@evenhand/sheet/grade-scale";
import { sheet } from "./lines.ts";

/** Ways to say less while seeming to say as much: the same report, softened. */

const each = (report: Report, change: (finding: Finding) => Finding): Report => ({
  ...report,
  findings: report.findings.map(change),
});

const answered = (report: Report, change: (said: Answer, finding: Finding) => Answer): Report =>
  each(report, (finding) => ({ ...finding, answer: change(finding.answer, finding) }));

/** Every reading with an instrument of its own item, ordinary but for what is changed. */
const measuredWith = (report: Report, change: (item: string) => Partial<Instrument>): Report => {
  const kinds = new Set<string>();
  const findings = report.findings.map((finding): Finding => {
    if (finding.answer.kind !== "reading") return finding;
    kinds.add(finding.item);
    return { ...finding, instrument: finding.item };
  });
  const own = [...kinds].map((item): Instrument => ({
    id: item,
    name: `a gauge for ${item}`,
    ...change(item),
  }));
  return { ...report, findings, instruments: [...report.instruments, ...own] };
};

const readingOf = (item: string) => {
  const spec = sheet.items.get(item)?.item.reading;
  if (spec === undefined) throw new Error(`${item} is no reading`);
  return spec;
};

export const hedged = (report: Report): Report => each(report, (one) => ({ ...one, firmness: "hedged" }));

export const byEye = (report: Report): Report => ({
  ...each(report, (one) => ({ ...one, instrument: undefined, basis: "seen" })),
  instruments: [],
});

export const accurateTo =
  (share: number) =>
  (report: Report): Report =>
    measuredWith(report, () => ({ accuracy: { share } }));

export const coarseResolution = (report: Report): Report =>
  measuredWith(report, (item) => {
    const { unit, instrument } = readingOf(item);
    const { absolute, share } = instrument.accuracy;
    return {
      resolution: { value: 100 * instrument.resolution, unit },
      accuracy: { absolute: { value: absolute, unit }, share },
    };
  });

/** The middle of a house grade, in per cent. */
const percentOf = (grade: string | number): number =>
  (houseGrades.findIndex((one) => one === grade) + 0.5) * houseStep * 100;

export const percentIn =
  (step: number) =>
  (report: Report): Report => ({
    ...answered(report, (said) =>
      said.kind === "grade" && said.scale === "house"
        ? { kind: "grade", scale: "percent", value: Math.round(percentOf(said.value)) }
        : said,
    ),
    scales: [
      ...report.scales.filter(({ id }) => id !== "percent"),
      {
        id: "percent",
        name: "Per cent",
        step,
        grades: [
          { id: "worst", name: "worst" },
          { id: "best", name: "best" },
        ],
      },
    ],
  });

/** Each reading as two, 30 % apart about what it was. */
export const twoReadings = (report: Report): Report =>
  answered(report, (said) => {
    if (said.kind !== "reading") return said;
    const mean = said.values.reduce((sum, { value }) => sum + value, 0) / said.values.length;
    return { ...said, values: [{ value: 0.85 * mean }, { value: 1.15 * mean }] };
  });

export const withoutExtents = (report: Report): Report =>
  answered(report, (said) =>
    said.kind === "faults" ? { ...said, found: said.found.map(({ kind }) => ({ kind })) } : said,
  );

const DAY_MS = 86_400_000;
const earlier = (time: string): string => new Date(Date.parse(time) - DAY_MS).toISOString();

export const dayEarlier = (report: Report): Report => {
  return {
    ...report,
    visit: {
      ...report.visit,
      started: earlier(report.visit.started),
      ended: report.visit.ended === undefined ? undefined : earlier(report.visit.ended),
    },
  };
};

export const unseen = (report: Report): Report =>
  answered(report, () => ({ kind: "not-seen", reason: "no-time" }));

export const notKnown = (report: Report): Report =>
  answered(report, (said) => {
    if (said.kind === "working" || said.kind === "presence") return { kind: said.kind, value: "not-known" };
    return said.kind === "choice" ? { kind: "choice", option: "not-known" } : said;
  });

const FIVE = ["worn", "used", "flawless", "finer", "finest"];

/** The house's five words by rank under five of one's own, of which the middle one promises the best. */
export const flawless = (report: Report): Report => ({
  ...answered(report, (said) =>
    said.kind === "grade" && said.scale === "house"
      ? {
          kind: "grade",
          scale: "own",
          value: FIVE[houseGrades.findIndex((one) => one === said.value)] ?? "used",
        }
      : said,
  ),
  scales: [...report.scales, { id: "own", name: "Own", grades: FIVE.map((id) => ({ id, name: id })) }],
});
