import type { Entry } from "@evenhand/shared/comparison";
import type { Outcome } from "@evenhand/shared/outcome";
import type { Report, ReportKind } from "@evenhand/shared/report";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { isBad } from "@evenhand/sheet/is-bad";
import { compare } from "../compare/index.ts";
import type { CompareOptions } from "../compare/index.ts";
import { isClaim } from "../silence/index.ts";

/** Everybody of one organization is one party, however many reports it wrote. */
export type Party = {
  readonly organization: string;
  readonly role: Report["author"]["role"];
  /** Indexes of its reports, earliest visit first. */
  readonly reports: readonly number[];
};

/** What one report says of a place. */
export type Saying = {
  readonly kind: ReportKind;
  readonly finding: number;
  /** It claims something: it saw, and knows. */
  readonly claims: boolean;
  readonly bad: boolean;
};

/** Two reports on one place, the earlier visit first, and the firmest outcome among the place's entries. */
export type PairOutcome = { readonly a: number; readonly b: number; readonly outcome: Outcome };

/**
 * - `one-party`: nobody else claims anything
 * - `agreed`: no two parties are at odds
 * - `in-doubt`: some pair of parties is doubtful, or one found what another said nothing of
 * - `disputed`: some pair of parties differs
 */
export type RowState = "one-party" | "agreed" | "in-doubt" | "disputed";

export type Row = {
  readonly item: string;
  readonly position: string;
  /** By report, in the order given. */
  readonly says: readonly (Saying | null)[];
  /** Between the reports that speak for the parties: each party's latest that claims anything. */
  readonly between: readonly PairOutcome[];
  /** Between the reports of one party: where it says one thing and then another. */
  readonly within: readonly PairOutcome[];
  readonly state: RowState;
};

export type WhoSaysWhat = { readonly parties: readonly Party[]; readonly rows: readonly Row[] };

/** A report with its place in the list given. */
type Numbered = { readonly index: number; readonly report: Report };

/** Earliest visit first; of one moment, as given. */
const byTime = (reports: readonly Report[]): Numbered[] =>
  reports
    .map((report, index) => ({ index, report }))
    .sort(
      (a, b) => Date.parse(a.report.visit.started) - Date.parse(b.report.visit.started) || a.index - b.index,
    );

const partiesOf = (ordered: readonly Numbered[]): Party[] =>
  Array.from(
    Map.groupBy(ordered, ({ report }) => report.author.organization),
    ([organization, ofParty]) => ({
      organization,
      role: ofParty[0]?.report.author.role ?? "dealer",
      reports: ofParty.map(({ index }) => index),
    }),
  );

/** From mildest to firmest. */
const FIRMNESS: readonly Outcome[] = [
  "agree",
  "consistent",
  "unseen",
  "incomparable",
  "unstated",
  "doubtful",
  "differ",
];

const firmer = (a: Outcome | undefined, b: Outcome): Outcome =>
  a === undefined || FIRMNESS.indexOf(b) > FIRMNESS.indexOf(a) ? b : a;

const placeKey = (item: string, position: string): string => `${item} ${position}`;

/** The firmest outcome of every place between two reports. */
const outcomesByPlace = (entries: readonly Entry[]): ReadonlyMap<string, Outcome> => {
  const outcomes = new Map<string, Outcome>();
  for (const { item, position, outcome } of entries) {
    const key = placeKey(item, position);
    outcomes.set(key, firmer(outcomes.get(key), outcome));
  }
  return outcomes;
};

type Pairwise = { readonly a: number; readonly b: number; readonly outcomes: ReadonlyMap<string, Outcome> };

const compareAll = (
  ordered: readonly Numbered[],
  sheet: CompiledSheet,
  options: CompareOptions,
): Pairwise[] =>
  ordered.flatMap((a, place) =>
    ordered.slice(place + 1).map((b) => {
      const { entries } = compare(a.report, b.report, sheet, options);
      return { a: a.index, b: b.index, outcomes: outcomesByPlace(entries) };
    }),
  );

const stateOf = (speakers: number, between: readonly PairOutcome[]): RowState => {
  if (speakers < 2) return "one-party";
  if (between.some(({ outcome }) => outcome === "differ")) return "disputed";
  return between.some(({ outcome }) => outcome === "doubtful" || outcome === "unstated")
    ? "in-doubt"
    : "agreed";
};

const pairsAmong = (reports: readonly number[], pairs: readonly Pairwise[], key: string): PairOutcome[] =>
  pairs.flatMap(({ a, b, outcomes }) => {
    const outcome = outcomes.get(key);
    return outcome !== undefined && reports.includes(a) && reports.includes(b) ? [{ a, b, outcome }] : [];
  });

const sayingsOf = (
  reports: readonly Report[],
  sheet: CompiledSheet,
): ReadonlyMap<string, (Saying | null)[]> => {
  const sayings = new Map<string, (Saying | null)[]>();
  for (const [index, { kind, findings, scales }] of reports.entries()) {
    for (const [place, finding] of findings.entries()) {
      const item = sheet.items.get(finding.item)?.item;
      if (item === undefined) continue;
      const key = placeKey(finding.item, finding.position);
      const row = sayings.get(key) ?? reports.map(() => null);
      row[index] = {
        kind,
        finding: place,
        claims: isClaim(finding),
        bad: isBad(finding.answer, item, scales),
      };
      sayings.set(key, row);
    }
  }
  return sayings;
};

const orderOf = ({ item, position }: Row, sheet: CompiledSheet) => {
  const compiled = sheet.items.get(item);
  return { item: compiled?.order ?? 0, position: compiled?.positionOrder(position) ?? 0 };
};

/**
 * Any number of reports on one car as a table of who says what: for every place somebody answered, what each report says,
 * and how the parties stand to each other. Nothing is counted and nobody is outvoted: a firm speaks once, by its latest
 * report, so that two reports of one dealer weigh no more against an inspector than one; where a firm's own reports are at
 * odds, that stands beside it.
 *
 * @param reports on one car, which `checkReport` accepted, in any order
 * @returns rows in sheet order
 * @throws {RangeError} when a finding's place is not on the sheet
 * @example manyReports([acquisition, statement, inspection], sheet).rows.filter(({ state }) => state === "disputed")
 */
export const manyReports = (
  reports: readonly Report[],
  sheet: CompiledSheet,
  options: CompareOptions = {},
): WhoSaysWhat => {
  const ordered = byTime(reports);
  const parties = partiesOf(ordered);
  const pairs = compareAll(ordered, sheet, options);
  const rows = Array.from(sayingsOf(reports, sheet), ([key, says]): Row => {
    const [id = "", position = ""] = key.split(" ");
    const claims = (index: number): boolean => says[index]?.claims === true;
    const speakers = parties.flatMap((party) => party.reports.findLast(claims) ?? []);
    const between = pairsAmong(speakers, pairs, key);
    const within = parties.flatMap((party) => pairsAmong(party.reports.filter(claims), pairs, key));
    return {
      item: id,
      position,
      says,
      between,
      within,
      state: stateOf(speakers.length, between),
    };
  });
  rows.sort((one, other) => {
    const [a, b] = [orderOf(one, sheet), orderOf(other, sheet)];
    return a.item - b.item || a.position - b.position;
  });
  return { parties, rows };
};
