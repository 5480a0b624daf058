import { listed } from "@evenhand/message/listed";
import { say } from "@evenhand/wording/say";
import { outcomeWords, standingWords } from "@evenhand/comparison/sentence";
import { outcomeSign } from "@evenhand/shared/outcome";
import { Outcome, Standing } from "@evenhand/shared/outcome";
import { ruleTitle } from "../view/cross-checks.ts";
import { countedItem, needsSentence, placeText } from "../view/index.ts";
import type { BrokenRule, Row, SectionView, SideView, View } from "../view/index.ts";
import { catalog } from "../words/catalog.ts";
import { formatShare } from "../words/quantity.ts";
import { columns, indented, wrap } from "./layout.ts";
import type { Style } from "./style.ts";

/** How wide the page is, and how it emphasizes; never by color alone. */
export type Terminal = { readonly width: number; readonly style: Style };

/** Of the column an outcome stands in. */
export const outcomeWidth = 14;

const sideText = ({ text, firmness }: SideView): string =>
  firmness === null ? text : catalog.noted(text, firmness);

/** An outcome with its sign, as every table begins with it. */
export const outcomeText = (outcome: Outcome): string => `${outcomeSign[outcome]} ${outcomeWords(outcome)}`;

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

/** Sentences of readings hold their figures already. */
const rowDetails = (row: Row): string[] => {
  const contradicted = row.entry.standing === "contradicted-by-figures";
  if (!needsSentence(row)) return contradicted ? [catalog.contradicted] : [];
  return [
    ...(contradicted ? [catalog.contradicted] : []),
    row.sentence,
    ...(row.figures !== null && row.entry.figures?.of === "grade" ? [row.figures] : []),
  ];
};

const rowLines = (row: Row, { width, style }: Terminal): string[] => {
  const { item, side } = widths(width);
  const [first = "", ...rest] = columns([
    { text: outcomeText(row.entry.outcome), width: outcomeWidth },
    { text: placeText(row), width: item },
    { text: sideText(row.stated), width: side },
    { text: sideText(row.found), width: side },
  ]);
  const strong = row.entry.outcome !== "agree" && row.entry.outcome !== "consistent";
  const details = rowDetails(row).flatMap((text) => indented(text, outcomeWidth + 2, width));
  return [strong ? style.strong(first) : first, ...rest, ...details.map(style.faint)];
};

const unseenText = ({ unseen, unseenPlaces }: SectionView): string => {
  const items = listed(unseen.map(countedItem), "semicolon");
  return catalog.labelled(`${outcomeSign.unseen} ${catalog.unseenBySection(unseenPlaces)}`, items);
};

const sectionLines = (view: SectionView, terminal: Terminal): string[] => [
  ...heading(catalog.section(view.section.number, view.section.words.american), terminal),
  ...(view.rows.length > 0 ? tableHead(terminal) : []),
  ...view.rows.flatMap((row) => rowLines(row, terminal)),
  ...(view.unseenPlaces > 0 ? wrap(unseenText(view), terminal.width) : []),
  ...(view.quiet > 0 ? wrap(`  ${catalog.quietBySection(view.quiet)}`, terminal.width) : []),
];

const brokenLines = (rule: BrokenRule, { width, style }: Terminal): string[] => {
  const { over, strength, sentence } = rule;
  const sign = `${catalog.verdictSign.breaks} ${catalog.verdict.breaks}`;
  const [first = "", ...rest] = columns([
    { text: strength === "contradicts" ? sign : catalog.hint, width: outcomeWidth },
    { text: catalog.whose[over], width: 10 },
    { text: catalog.labelled(ruleTitle(rule), sentence), width: width - outcomeWidth - 14 },
  ]);
  return [style.strong(first), ...rest];
};

const crossCheckLines = (
  { crossChecks: { broken, holding, untold }, comparison: { handbook, b } }: View,
  terminal: Terminal,
): string[] => [
  ...heading(catalog.crossChecks, terminal),
  ...(handbook === undefined ? [] : wrap(catalog.ownHandbook(handbook, b.organization), terminal.width)),
  ...broken.flatMap((rule) => brokenLines(rule, terminal)),
  ...(broken.length === 0 ? [catalog.noneBroken] : []),
  ...(holding.length > 0 ? wrap(catalog.rulesHold(holding), terminal.width) : []),
  ...(untold > 0 ? wrap(catalog.rulesCannotTell(untold), terminal.width) : []),
];

type CoverageRow = View["comparison"]["coverage"]["whole"];

const countWidth = 7;
const shareWidth = 8;

/** Name, four counts and a share; the name gives way on a narrow terminal. */
const coverageColumns = (name: string, counts: readonly string[], share: string, width: number): string[] =>
  columns([
    { text: name, width: Math.min(30, width - 4 * (countWidth + 2) - shareWidth - 2) },
    ...counts.map((text) => ({ text, width: countWidth, align: "right" as const })),
    { text: share, width: shareWidth, align: "right" },
  ]);

const coverageLine = (name: string, row: CoverageRow, { width }: Terminal): string[] => {
  const counts = [row.onSheet, row.stated, row.seen, row.statedAndSeen].map(String);
  return coverageColumns(
    name,
    counts,
    row.stated === 0 ? "—" : formatShare(row.statedAndSeen / row.stated),
    width,
  );
};

const coverageHead = ({ width }: Terminal): string[] => {
  const { of, share, ...counts } = catalog.coverageHead;
  return coverageColumns(of, Object.values(counts), share, width);
};

const unseenDecisiveLines = ({ unseenDecisive }: View, { width }: Terminal): string[] =>
  unseenDecisive.length === 0
    ? []
    : wrap(
        catalog.labelled(
          `${outcomeSign.unseen} ${catalog.unseenDecisive}`,
          listed(unseenDecisive, "semicolon"),
        ),
        width,
      );

const coverageLines = (view: View, terminal: Terminal): string[] => {
  const { coverage, softness, chance, scatter } = view.comparison;
  const scattered = scatter === undefined ? undefined : catalog.scatter(scatter);
  const sectionWords = new Map(view.sections.map(({ section }) => [section.id, section.words.american]));
  return [
    ...heading(catalog.coverage, terminal),
    ...coverageHead(terminal).map(terminal.style.faint),
    ...coverage.bySection.flatMap((row) => coverageLine(sectionWords.get(row.of) ?? row.of, row, terminal)),
    ...coverageLine(catalog.whole, coverage.whole, terminal),
    "",
    ...wrap(catalog.softness(softness), terminal.width),
    ...wrap(catalog.chance(chance), terminal.width),
    ...(scattered === undefined ? [] : wrap(scattered, terminal.width)),
    ...catalog.likeness(view.comparison).flatMap((line) => wrap(line, terminal.width)),
    ...unseenDecisiveLines(view, terminal),
  ];
};

/** As many as a person reads at one sitting; the rest stand in their sections. */
const mostPressing = 30;

const pressingLines = ({ pressing }: View, terminal: Terminal): string[] => [
  ...heading(catalog.mostPressing, terminal),
  ...(pressing.length === 0 ? [catalog.noneInDoubt] : tableHead(terminal)),
  ...pressing.slice(0, mostPressing).flatMap((row) => rowLines(row, terminal)),
  ...(pressing.length > mostPressing ? [catalog.morePressing(pressing.length - mostPressing)] : []),
];

const totalLines = ({ comparison }: View, terminal: Terminal): string[] => {
  const outcomes = Outcome.options.map(
    (outcome) => `${outcomeSign[outcome]} ${outcomeWords(outcome)} ${comparison.tally[outcome] ?? 0}`,
  );
  const standings = Standing.options
    .filter((standing) => (comparison.standings[standing] ?? 0) > 0)
    .map((standing) => `${standingWords(standing)} ${comparison.standings[standing]}`);
  return [
    ...heading(catalog.totals, terminal),
    ...wrap(outcomes.join("   "), terminal.width).map(terminal.style.strong),
    ...wrap(catalog.standingsLine(catalog.standings, standings), terminal.width),
  ];
};

const reportLine = (side: "A" | "B", report: View["a"], terminal: Terminal): string[] =>
  wrap(
    catalog.report({
      side,
      kind: say(`kind.${report.kind}`),
      day: report.visit.started.slice(0, 10),
      organization: report.author.organization,
      findings: catalog.findings(report.findings.length),
    }),
    terminal.width,
  );

const headLines = ({ comparison, a, b }: View, terminal: Terminal): string[] => {
  const { make, model, modelYear, identification } = comparison.vehicle;
  return [
    terminal.style.strong(catalog.title),
    catalog.car({ modelYear, make, model, identification }),
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
