import { type Comparison, type Entry, isStatedWorse } from "@evenhand/shared/comparison";
import type { Standing } from "@evenhand/shared/outcome";
import { BECAME } from "@evenhand/shared/page-one";
import type { Became, Claims, LineClaim } from "@evenhand/shared/page-one";
import { isDecisive, Severity, severityRank } from "@evenhand/shared/severity";
import { findingOf } from "@evenhand/comparison/finding-of";
import { worstSeverity } from "@evenhand/comparison/worst-severity";
import { claimWords, phraseOf, placeWords, saidOf } from "../headline/index.ts";
import type { Reports } from "../headline/index.ts";
import { SOLD_BY } from "./sold-by.ts";

const BECOMES: Readonly<Record<Standing, Became>> = {
  confirmed: "held",
  "not-contradicted": "held",
  "agreed-fault": "disclosed",
  differs: "fell",
  "contradicted-by-figures": "fell",
  "not-mentioned": "fell",
  "in-doubt": "doubtful",
  "too-coarse": "notComparable",
  "not-comparable": "notComparable",
  unseen: "unseen",
};

const isClaim = ({ finding }: Entry, { a }: Reports): boolean => {
  const stated = findingOf(a.findings, finding.a);
  return stated !== undefined && stated.answer.kind !== "not-seen";
};

/** A place stated, with what became of it and the line that says so. */
type Claim = { readonly became: Became; readonly line: Entry };

const isFallen = ({ standing, direction }: Entry): boolean =>
  BECOMES[standing] === "fell" && direction !== "found-better";

/** From the worst down: a place with several lines became what the worst of them says. */
const claimOf = (lines: readonly Entry[]): Claim | undefined => {
  for (const became of BECAME) {
    const line = lines.find((one) => (became === "fell" ? isFallen(one) : BECOMES[one.standing] === became));
    if (line !== undefined) return { became, line };
  }
  const [line] = lines;
  return line === undefined ? undefined : { became: "held", line };
};

const bySeverity = (a: Claim, b: Claim): number =>
  severityRank(a.line.severity ?? "small") - severityRank(b.line.severity ?? "small");

const SHOWN = 5;
const LINE = 8;

/** The first of every item. */
const oneAnItem = (claims: readonly Claim[]): Claim[] => {
  const first = new Map<string, Claim>();
  for (const claim of claims) if (!first.has(claim.line.item)) first.set(claim.line.item, claim);
  return [...first.values()];
};

const wordsOf = ({ line, became }: Claim, reports: Reports): LineClaim => ({
  words: claimWords(placeWords(line, reports.sheet), saidOf(line, "a", reports)),
  became,
});

/** The dealer's line is nothing but claims: the gravest that fell, and what a car is sold by. */
const lineOf = (claims: readonly Claim[], fallen: readonly Claim[], reports: Reports): LineClaim[] => {
  const fell = oneAnItem(fallen).slice(0, SHOWN);
  const said = new Set(fell.map(({ line }) => line.item));
  const sold = SOLD_BY.filter((item) => !said.has(item)).flatMap((item): Claim[] => {
    const of = claims.filter(({ line }) => line.item === item);
    const worst = BECAME.map((became) => of.find((one) => one.became === became)).find(Boolean);
    return worst === undefined ? [] : [worst];
  });
  return [...fell, ...sold].slice(0, LINE).map((claim) => wordsOf(claim, reports));
};

const countOf = (claims: readonly Claim[], became: Became): number =>
  claims.filter((claim) => claim.became === became).length;

/** Coverage by severity counts places; what held of them is counted by what can be at stake there. */
const decisiveOf = (
  coverage: Comparison["coverage"],
  claims: readonly Claim[],
  { sheet }: Reports,
): Claims["decisive"] => {
  const rows = coverage.bySeverity.filter(({ of }) => isDecisive(Severity.parse(of)));
  const sum = (of: "stated" | "onSheet") => rows.reduce((total, row) => total + row[of], 0);
  const isHeld = ({ became, line }: Claim): boolean => {
    const compiled = sheet.items.get(line.item);
    return became === "held" && compiled !== undefined && isDecisive(worstSeverity(compiled, line.position));
  };
  return { stated: sum("stated"), onSheet: sum("onSheet"), held: claims.filter(isHeld).length };
};

/**
 * What became of the statement's claims: how many held, were owned up to, fell, are in doubt or were not seen, the gravest that
 * fell, and the dealer's line, claim by claim. What was found better than stated has not fallen.
 *
 * @example claimsOf(comparison, reports).fell // 12
 */
export const claimsOf = (
  { entries, coverage }: Pick<Comparison, "entries"> & Partial<Pick<Comparison, "coverage">>,
  reports: Reports,
): Claims => {
  const places = Map.groupBy(
    entries.filter((entry) => isClaim(entry, reports)),
    ({ item, position }) => `${item}@${position}`,
  );
  const claims = [...places.values()].flatMap((lines) => claimOf(lines) ?? []);
  const fallen = claims.filter(({ became }) => became === "fell").toSorted(bySeverity);
  return {
    stated: places.size,
    decisive: coverage === undefined ? undefined : decisiveOf(coverage, claims, reports),
    held: countOf(claims, "held"),
    disclosed: countOf(claims, "disclosed"),
    statedWorse: [...places.values()].filter((lines) => lines.some(isStatedWorse)).length,
    fell: fallen.length,
    doubtful: countOf(claims, "doubtful"),
    unseen: countOf(claims, "unseen"),
    notComparable: countOf(claims, "notComparable"),
    fallen: fallen.slice(0, SHOWN).map(({ line }) => phraseOf(line, reports)),
    line: lineOf(claims, fallen, reports),
  };
};
