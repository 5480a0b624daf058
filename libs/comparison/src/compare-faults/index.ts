import type { AnswerOf, Fault } from "@evenhand/shared/answer";
import type { Atom } from "@evenhand/shared/comparison";
import type { Severity } from "@evenhand/shared/severity";
import type { Item } from "@evenhand/shared/sheet";
import { compareDenials } from "../compare-denials/index.ts";
import { agreedFault, compareExtents } from "../compare-extents/index.ts";
import { extentOf, matchFaults } from "../fault-matches/index.ts";
import type { FaultFrame, FaultMatch } from "../fault-matches/index.ts";
import { coversKind, familyOf } from "../fault-stages/index.ts";
import { inOneShape, WHOLE } from "../judgment/index.ts";
import type { AtomJudgment, Judgment, Say } from "../judgment/index.ts";

type Faults = AnswerOf<"faults">;

const DISCLOSED = inOneShape({
  outcome: "doubtful",
  reason: "disclosed-not-found",
  direction: "found-better",
  standing: "in-doubt",
});
const DENIED = inOneShape({
  outcome: "differ",
  reason: "denied-found",
  direction: "stated-better",
  standing: "differs",
});
const TRIFLE = inOneShape({
  outcome: "consistent",
  reason: "denied-trifle",
  direction: "stated-better",
  standing: "not-contradicted",
});
const NOT_STATED = inOneShape({
  outcome: "unstated",
  reason: "found-bad-not-stated",
  direction: "neither",
  standing: "not-mentioned",
});
const GRAVER = inOneShape({ ...NOT_STATED, reason: "graver-stage" });
const NOTHING_CLAIMED = inOneShape({
  outcome: "unseen",
  reason: "nothing-claimed",
  direction: "neither",
  standing: "unseen",
});

/** By far the most frequent case: both say there are no faults at all. */
const NONE_AT_ALL: AtomJudgment = {
  atom: Object.freeze({ of: "denial", kind: "all", by: "both" }),
  said: inOneShape({
    outcome: "agree",
    reason: "denied-by-both",
    direction: "neither",
    standing: "confirmed",
  }),
};

/** Two answers of faults at one place. */
export type FaultsPair = {
  readonly a: Faults;
  readonly b: Faults;
  readonly item: Pick<Item, "consequence">;
  readonly frame: FaultFrame;
  /** How grave a fault is where it was found; asked only of short ones that are denied. */
  readonly severityOf: (fault: Fault) => Severity;
  /** One person looked for both sides, so that the error of the eye cancels. */
  readonly sharedEye: boolean;
};

const denies = ({ denied }: Faults, kind: string, frame: FaultFrame): boolean => {
  if (denied === "all") return true;
  for (const each of denied) if (coversKind(each, kind, frame)) return true;
  return false;
};

/**
 * Smaller than what matters of its kind, and a small thing where it is (a chip in a window, a scratch on a wheel): what has to be
 * repaired, as bubbles of rust the size of a coin, is none. Holes, cracks and the structure are never trifles.
 */
const isTrifle = (fault: Fault, { frame, item, severityOf }: FaultsPair): boolean => {
  const kind = frame.kinds.get(fault.kind);
  const extent = extentOf(fault, frame);
  return (
    kind !== undefined &&
    extent !== undefined &&
    extent < kind.delta.absolute &&
    kind.neverTrifling !== true &&
    item.consequence !== "structure" &&
    severityOf(fault) === "small"
  );
};

/** Other units of one extent differ by less. */
const ROUNDING = 1e-9;

const totalOf = (faults: readonly Fault[], family: string, frame: FaultFrame): number | undefined => {
  let total = 0;
  for (const fault of faults) {
    if (familyOf(fault.kind, frame) !== family) continue;
    const extent = extentOf(fault, frame);
    if (extent === undefined) return undefined;
    total += extent;
  }
  return total;
};

/**
 * Extents of one family on one panel add up: what was disclosed there covers what was found there in all, where both say how large.
 * `undefined` where it does not.
 */
const inAll = (fault: Fault, { a, b, frame }: FaultsPair): Judgment | undefined => {
  const family = familyOf(fault.kind, frame);
  const kind = frame.kinds.get(fault.kind);
  const disclosed = totalOf(a.found, family, frame);
  const found = totalOf(b.found, family, frame);
  if (kind === undefined || !a.found.some((each) => familyOf(each.kind, frame) === family)) return undefined;
  if (disclosed === undefined || found === undefined) return agreedFault("consistent", "perhaps-in-all");
  const most = disclosed + Math.max(kind.delta.absolute, kind.delta.share * disclosed);
  return found <= most * (1 + ROUNDING) ? agreedFault("agree", "disclosed-in-all") : undefined;
};

const rankOf = (fault: Fault, frame: FaultFrame): number => frame.kinds.get(fault.kind)?.rank ?? 0;

/** A hole where rust was shown is news; corrosion where bubbles were shown is not. */
const isGraverStage = (a: Fault, b: Fault, frame: FaultFrame): boolean =>
  rankOf(b, frame) > rankOf(a, frame) && frame.kinds.get(b.kind)?.neverTrifling === true;

const NO_FAULTS: readonly Fault[] = [];

const ofFamilyOf = ({ kind }: Fault, faults: readonly Fault[], frame: FaultFrame): readonly Fault[] =>
  faults.length === 0
    ? NO_FAULTS
    : faults.filter((each) => familyOf(each.kind, frame) === familyOf(kind, frame));

const leftOverOfB = (fault: Fault, pair: FaultsPair): Judgment => {
  const stages = ofFamilyOf(fault, pair.a.found, pair.frame);
  if (stages.length > 0) {
    if (stages.every((each) => isGraverStage(each, fault, pair.frame)))
      return pair.a.denied.includes(fault.kind) ? DENIED : GRAVER;
    const covered = inAll(fault, pair);
    if (covered !== undefined) return covered;
  }
  if (!denies(pair.a, fault.kind, pair.frame)) return NOT_STATED;
  return isTrifle(fault, pair) ? TRIFLE : DENIED;
};

/** What was shown and is there at a graver stage was disclosed as far as it went. */
const leftOverOfA = (fault: Fault, { b, frame }: FaultsPair): Judgment =>
  b.found.some(
    (each) => familyOf(each.kind, frame) === familyOf(fault.kind, frame) && isGraverStage(fault, each, frame),
  )
    ? agreedFault("agree", "disclosed-milder")
    : DISCLOSED;

/** A fault that is anywhere on the panel is the one that was found wherever that is: it may be, and nothing shows it. */
const isSomewhere = (a: Fault, b: Fault, { drawing }: FaultFrame): boolean =>
  drawing !== undefined && (a.spot === undefined || b.spot === undefined);

const judgeBoth = (a: Fault, b: Fault, pair: FaultsPair): Judgment => {
  const said = compareExtents(a, b, pair.frame, pair.sharedEye);
  const settled = said.outcome === "differ" ? (inAll(b, pair) ?? said) : said;
  return settled.outcome === "agree" && isSomewhere(a, b, pair.frame)
    ? { ...agreedFault("consistent", "place-not-given"), figures: settled.figures }
    : settled;
};

/**
 * The atom of a fault, by its index on the sides that found it.
 *
 * @example faultAtom({ b: 0 }, { kind: "dent", spot: "upper-front" })
 * // { of: "fault", kind: "dent", spot: "upper-front", b: 0 }
 */
export const faultAtom = ({ a, b }: FaultMatch, { kind, spot }: Fault): Atom => {
  const atom: Atom = spot === undefined ? { of: "fault", kind } : { of: "fault", kind, spot };
  if (a !== undefined) atom.a = a;
  if (b !== undefined) atom.b = b;
  return atom;
};

/** A patch stands where the rust was that the statement showed: how it was mended, not another fault. */
const MENDS = new Map([["repair", "rust"]]);

const joinMended = (matches: readonly FaultMatch[], { a, b, frame }: FaultsPair): readonly FaultMatch[] => {
  const freeA = matches.filter((match) => match.b === undefined && match.a !== undefined);
  const joined = new Map<number, number>();
  for (const { a: indexA, b: indexB } of matches) {
    const patch = indexB === undefined ? undefined : b.found[indexB];
    if (indexA !== undefined || patch === undefined) continue;
    const mended = MENDS.get(familyOf(patch.kind, frame));
    const rust = freeA.find(({ a: index }) => {
      const fault = index === undefined ? undefined : a.found[index];
      return fault !== undefined && familyOf(fault.kind, frame) === mended && fault.spot === patch.spot;
    });
    if (rust?.a !== undefined && indexB !== undefined && !joined.has(rust.a)) joined.set(rust.a, indexB);
  }
  if (joined.size === 0) return matches;
  const taken = new Set(joined.values());
  return matches.flatMap((match): FaultMatch[] => {
    const { a: indexA, b: indexB } = match;
    if (indexA === undefined) return indexB !== undefined && taken.has(indexB) ? [] : [match];
    const patch = joined.get(indexA);
    return [patch === undefined ? match : { a: indexA, b: patch }];
  });
};

/** Few cars have a patch at all. */
const withMended = (matches: readonly FaultMatch[], pair: FaultsPair): readonly FaultMatch[] => {
  const { a, b, frame } = pair;
  if (a.found.length === 0) return matches;
  for (const { kind } of b.found) if (MENDS.has(familyOf(kind, frame))) return joinMended(matches, pair);
  return matches;
};

const judgeMatch = (a: Fault | undefined, b: Fault | undefined, pair: FaultsPair): Judgment => {
  if (b === undefined) return a === undefined ? NOTHING_CLAIMED : leftOverOfA(a, pair);
  return a === undefined ? leftOverOfB(b, pair) : judgeBoth(a, b, pair);
};

const NOTHING_SAID: readonly AtomJudgment[] = [];

/** Says of each fault what is to be said, and gives those that contradict a denial: few do. */
const sayFound = (pair: FaultsPair, say: Say): readonly AtomJudgment[] => {
  const { a, b, frame } = pair;
  let contradicting: AtomJudgment[] | undefined;
  const matches = withMended(matchFaults(a.found, b.found, frame), pair);
  // By index: lists kept for good and lists made now are two kinds to the machine, and walking both makes garbage.
  for (let index = 0; index < matches.length; index += 1) {
    const match = matches[index];
    if (match === undefined) continue;
    const faultA = match.a === undefined ? undefined : a.found[match.a];
    const faultB = match.b === undefined ? undefined : b.found[match.b];
    // The spot shown is where the inspection found it, and where it was stated if it was not found.
    const shown = faultB ?? faultA;
    if (shown === undefined) continue;
    const said = judgeMatch(faultA, faultB, pair);
    const atom = faultAtom(match, shown);
    if (said === DENIED || said === DISCLOSED) (contradicting ??= []).push({ atom, said });
    say(atom, said);
  }
  return contradicting ?? NOTHING_SAID;
};

/** Neither side says anything of faults. */
const isSilent = ({ a, b }: FaultsPair): boolean =>
  a.found.length + b.found.length === 0 && a.denied.length + b.denied.length === 0;

/**
 * Compares two answers of faults, atom by atom. Faults are matched by family and spot; extents are compared as readings by eye,
 * add up over a panel, and disclosed at least as large as found agrees. Left over on B's side: differ where A denied it or a milder stage of it,
 * consistent where it is smaller than what matters of its kind, else unstated; a hole where rust was shown is unstated. Left over
 * on A's side: doubtful, disclosed and not found. Kinds denied by both agree; by A alone are not contradicted; by B alone were
 * seen sound and not stated.
 *
 * @param say takes each atom and what is said of it; the whole place where neither side says anything
 * @example compareFaults({ a: noneAtAll, b: noneAtAll, item, frame, sharedEye: false }, say) // says "agree" of the denial of all
 */
export const compareFaults = (pair: FaultsPair, say: Say): void => {
  const { a, b, frame } = pair;
  if (isSilent(pair)) return say(WHOLE, NOTHING_CLAIMED);
  if (a.denied === "all" && b.denied === "all" && a.found.length + b.found.length === 0) {
    return say(NONE_AT_ALL.atom, NONE_AT_ALL.said);
  }
  return compareDenials(a, b, frame, sayFound(pair, say), say);
};
