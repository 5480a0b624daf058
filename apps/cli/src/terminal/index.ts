import { outcomeSign } from "@evenhand/shared/outcome";
import { Outcome, Standing } from "@evenhand/shared/outcome";
import { placeText } from "../view/index.ts";
import type { CrossCheckView, Row, SectionView, SideView, View } from "../view/index.ts";
import { catalog } from "../words/catalog.ts";
import { formatShare } from "../words/number.ts";
import { columns, indented, wrap } from "./layout.ts";
import type { Style } from "./style.ts";

/** How wide the page is, and how it emphasizes; never by color alone. */
export type Terminal = { readonly width: number; readonly style: Style };

const outcomeWidth = 14;

const sideText = ({ text, firmness }: SideView): string =>
  firmness === null ? text : `${text} (${firmness})`;

const outcomeText = ({ entry }: Row): string =>
  `${outcomeSign[entry.outcome]} ${catalog.outcome[entry.outcome]}`;

/** Widths of the columns item · stated · found beside the outcome. */
const widths = (width: number): { item: number; side: number } => {
  const rest = width - outcomeWidth - 3 * 2;
  const side = Math.floor(rest * 0.31);
  return { item: rest - 2 * side, side };
};

const heading = (text: string, { width, style }: Terminal): string[] => [
  "",
  style.strong(text.toUpperCase()),
  "─".repeat(width),
];

const tableHead = ({ width, style }: Terminal): string[] => {
  const { item, side } = widths(width);
  return columns([
    { text: catalog.outcomeHeading, width: outcomeWidth },
    { text: catalog.item, width: item },
    { text: `A ${catalog.stated.toLowerCase()}`, width: side },
    { text: `B ${catalog.found.toLowerCase()}`, width: side },
  ]).map(style.faint);
};

const rowDetails = (row: Row): string[] => [
  ...(row.sentence === "" ? [] : [row.sentence]),
  ...[row.figures, ...row.limits].filter((text) => text !== null).slice(0, 3),
];

const rowLines = (row: Row, { width, style }: Terminal): string[] => {
  const { item, side } = widths(width);
  const [first = "", ...rest] = columns([
    { text: outcomeText(row), width: outcomeWidth },
    { text: placeText(row), width: item },
    { text: sideText(row.stated), width: side },
    { text: sideText(row.found), width: side },
  ]);
  const strong = row.entry.outcome !== "agree" && row.entry.outcome !== "consistent";
  const details = rowDetails(row).flatMap((text) => indented(text, outcomeWidth + 2, width));
  return [strong ? style.strong(first) : first, ...rest, ...details.map(style.faint)];
};

const unseenText = ({ unseen, unseenPlaces }: SectionView): string => {
  const items = unseen.map(({ item, places }) => (places > 1 ? `${item} (${places})` : item)).join("; ");
  return `${outcomeSign.unseen} ${catalog.unseenBySection(unseenPlaces)}: ${items}`;
};

const sectionLines = (view: SectionView, terminal: Terminal): string[] => [
  ...heading(catalog.section(view.section.number, view.section.words.american), terminal),
  ...(view.rows.length > 0 ? tableHead(terminal) : []),
  ...view.rows.flatMap((row) => rowLines(row, terminal)),
  ...(view.unseenPlaces > 0 ? wrap(unseenText(view), terminal.width) : []),
  ...(view.quiet > 0 ? wrap(`  ${catalog.quietBySection(view.quiet)}`, terminal.width) : []),
];

const checkLines = ({ check, sentence }: CrossCheckView, { width, style }: Terminal): string[] => {
  const sign = `${catalog.verdictSign[check.verdict]} ${catalog.verdict[check.verdict]}`;
  const lines = columns([
    { text: sign, width: outcomeWidth },
    { text: sentence, width: width - outcomeWidth - 2 },
  ]);
  return check.verdict === "breaks" ? lines.map(style.strong) : lines;
};

const crossCheckLines = ({ crossChecks }: View, terminal: Terminal): string[] => {
  const told = crossChecks.filter(({ check }) => check.verdict !== "cannot-tell");
  const breaksFirst = [
    ...told.filter(({ check }) => check.verdict === "breaks"),
    ...told.filter(({ check }) => check.verdict === "holds"),
  ];
  const untold = crossChecks.length - told.length;
  return [
    ...heading(catalog.crossChecks, terminal),
    ...breaksFirst.flatMap((check) => checkLines(check, terminal)),
    ...(untold > 0 ? [terminal.style.faint(catalog.rulesCannotTell(untold))] : []),
  ];
};

type CoverageRow = View["comparison"]["coverage"]["whole"];

const coverageLine = (words: string, row: CoverageRow): string[] =>
  columns([
    { text: words, width: 30 },
    ...[row.onSheet, row.stated, row.seen, row.statedAndSeen].map((count) => ({
      text: String(count),
      width: 8,
      align: "right" as const,
    })),
    { text: row.stated === 0 ? "—" : formatShare(row.statedAndSeen / row.stated), width: 14, align: "right" },
  ]);

const coverageLines = (view: View, terminal: Terminal): string[] => {
  const { coverage, softness, chance } = view.comparison;
  const sectionWords = new Map(view.sections.map(({ section }) => [section.id, section.words.american]));
  const { of, share, ...counts } = catalog.coverageHead;
  const head = columns([
    { text: of, width: 30 },
    ...Object.values(counts).map((text) => ({ text, width: 8, align: "right" as const })),
    { text: share, width: 14, align: "right" },
  ]);
  return [
    ...heading(catalog.coverage, terminal),
    ...head.map(terminal.style.faint),
    ...coverage.bySection.flatMap((row) => coverageLine(sectionWords.get(row.of) ?? row.of, row)),
    ...coverageLine(catalog.whole, coverage.whole),
    "",
    ...wrap(catalog.softness(softness), terminal.width),
    ...wrap(catalog.chance(chance), terminal.width),
    ...(view.unseenDecisive.length > 0
      ? wrap(
          `${outcomeSign.unseen} ${catalog.unseenDecisive}: ${view.unseenDecisive.join("; ")}`,
          terminal.width,
        )
      : []),
  ];
};

const pressingLines = ({ pressing }: View, terminal: Terminal): string[] => [
  ...heading(catalog.mostPressing, terminal),
  ...(pressing.length === 0 ? [catalog.noneInDoubt] : tableHead(terminal)),
  ...pressing.flatMap((row) => rowLines(row, terminal)),
];

const totalLines = ({ comparison }: View, terminal: Terminal): string[] => {
  const outcomes = Outcome.options.map(
    (outcome) => `${outcomeSign[outcome]} ${catalog.outcome[outcome]} ${comparison.tally[outcome] ?? 0}`,
  );
  const standings = Standing.options
    .filter((standing) => (comparison.standings[standing] ?? 0) > 0)
    .map((standing) => `${catalog.standing[standing]} ${comparison.standings[standing]}`);
  return [
    ...heading(catalog.totals, terminal),
    ...wrap(outcomes.join("   "), terminal.width).map(terminal.style.strong),
    ...wrap(`${catalog.standings}: ${standings.join(", ")}.`, terminal.width),
  ];
};

const reportLine = (side: "A" | "B", report: View["a"], terminal: Terminal): string[] =>
  wrap(
    `${side}  ${catalog.kind[report.kind]} of ${report.visit.started.slice(0, 10)} by ${report.author.organization}, ${catalog.findings(report.findings.length)}`,
    terminal.width,
  );

const headLines = ({ comparison, a, b }: View, terminal: Terminal): string[] => {
  const { make, model, modelYear, identification } = comparison.vehicle;
  return [
    terminal.style.strong(catalog.title),
    `${modelYear} ${make} ${model}, ${identification}`,
    ...reportLine("A", a, terminal),
    ...reportLine("B", b, terminal),
  ];
};

/**
 * The whole comparison as lines for a terminal: sections, then what the figures give away, coverage, what presses most, and the
 * totals last, where the eye rests.
 */
export const terminalLines = (view: View, terminal: Terminal): string[] => [
  ...headLines(view, terminal),
  ...view.sections.flatMap((section) => sectionLines(section, terminal)),
  ...crossCheckLines(view, terminal),
  ...coverageLines(view, terminal),
  ...pressingLines(view, terminal),
  ...totalLines(view, terminal),
  "",
  ...wrap(catalog.caution, terminal.width),
];
