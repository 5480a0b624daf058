import type { AnswerOf } from "@evenhand/shared/answer";
import { coversKind } from "../fault-stages/index.ts";
import type { FaultFrame } from "../fault-matches/index.ts";
import { inOneShape, SEEN_SOUND } from "../judgment/index.ts";
import type { AtomJudgment, Say } from "../judgment/index.ts";

type Faults = AnswerOf<"faults">;

const BY_BOTH = inOneShape({
  outcome: "agree",
  reason: "denied-by-both",
  direction: "neither",
  standing: "confirmed",
});
const BY_STATEMENT = inOneShape({
  outcome: "consistent",
  reason: "denied-not-contradicted",
  direction: "neither",
  standing: "not-contradicted",
});

const ALL: readonly string[] = ["all"];

const rankOf = (kind: string, { kindOrder }: FaultFrame): number => kindOrder.get(kind) ?? kindOrder.size;

const byRank = (a: string, b: string, frame: FaultFrame): number =>
  rankOf(a, frame) - rankOf(b, frame) || (a < b ? -1 : 1);

const onceInOrder = (kinds: readonly string[], frame: FaultFrame): readonly string[] =>
  Array.from(new Set(kinds)).sort((a, b) => byRank(a, b, frame));

/**
 * The kinds an answer denies in the order of the item's kinds, each once; `all` for none at all.
 *
 * @example deniedKinds({ kind: "faults", found: [], denied: "all" }, frame) // ["all"]
 */
export const deniedKinds = ({ denied }: Pick<Faults, "denied">, frame: FaultFrame): readonly string[] => {
  if (denied === "all") return ALL;
  if (denied.length < 2) return denied;
  const [first = "", second = ""] = denied;
  if (denied.length > 2 || first === second) return onceInOrder(denied, frame);
  return byRank(first, second, frame) < 0 ? denied : [second, first];
};

/** The reason of a fault that contradicts a denial of this side. */
const CONTRADICTED_BY = { a: "denied-found", b: "disclosed-not-found" } as const;

/** A denial that a fault of the other side contradicts has that fault's entry for its own. */
const isContradicted = (
  kind: string,
  by: "a" | "b",
  found: readonly AtomJudgment[],
  frame: FaultFrame,
): boolean => {
  for (const { atom, said } of found) {
    if (said.reason !== CONTRADICTED_BY[by] || atom.of !== "fault") continue;
    if (kind === "all" || coversKind(kind, atom.kind, frame)) return true;
  }
  return false;
};

const withoutContradicted = (
  denied: readonly string[],
  by: "a" | "b",
  found: readonly AtomJudgment[],
  frame: FaultFrame,
): readonly string[] => denied.filter((kind) => !isContradicted(kind, by, found, frame));

/** What an answer denies and no fault contradicts. */
const standing = (
  answer: Faults,
  by: "a" | "b",
  frame: FaultFrame,
  found: readonly AtomJudgment[],
): readonly string[] => {
  const denied = deniedKinds(answer, frame);
  for (const { said } of found) {
    if (said.reason === CONTRADICTED_BY[by]) return withoutContradicted(denied, by, found, frame);
  }
  return denied;
};

/**
 * Says of the kinds either side denies: denied by both agrees (a kind also where the other side denies all), by
 * the statement alone is not contradicted, by the inspection alone was seen sound and not stated. `by` names who denies
 * just that.
 *
 * @param found what was said of faults found that may contradict a denial
 * @param say takes each denied kind and what is said of it
 * @example compareDenials(noneAtAll, noneAtAll, frame, [], say) // says "agree" of the kind "all"
 */
export const compareDenials = (
  a: Faults,
  b: Faults,
  frame: FaultFrame,
  found: readonly AtomJudgment[],
  say: Say,
): void => {
  const deniedA = standing(a, "a", frame, found);
  const deniedB = standing(b, "b", frame, found);
  for (const kind of deniedA) {
    const both = deniedB.includes(kind);
    const said = both || b.denied === "all" ? BY_BOTH : BY_STATEMENT;
    say({ of: "denial", kind, by: both ? "both" : "a" }, said);
  }
  for (const kind of deniedB) {
    if (deniedA.includes(kind)) continue;
    say({ of: "denial", kind, by: "b" }, a.denied === "all" ? BY_BOTH : SEEN_SOUND);
  }
};
