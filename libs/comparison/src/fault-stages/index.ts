import type { FaultKind } from "@evenhand/shared/sheet";

/** Kinds of the sheet that are stages and names of one thing. */
export type Stages = {
  readonly kinds: ReadonlyMap<string, Pick<FaultKind, "family" | "rank" | "neverTrifling">>;
};

/** The family of a kind: stages and names of one thing. */
export const familyOf = (kind: string, { kinds }: Stages): string => kinds.get(kind)?.family ?? kind;

/**
 * Whether who denies a kind denies another one too: a stage of the same thing. Who says that nothing is rusted through has not said that
 * there is no rust; who says that there is none has said that nothing is rusted through, and that nothing bubbles.
 *
 * @example coversKind("corrosion", "perforation", frame) // true
 * @example coversKind("perforation", "corrosion", frame) // false
 */
export const coversKind = (denied: string, kind: string, stages: Stages): boolean => {
  if (denied === kind) return true;
  const [one, other] = [stages.kinds.get(denied), stages.kinds.get(kind)];
  if (one === undefined || other === undefined || one.family !== other.family) return false;
  return one.neverTrifling !== true || one.rank <= other.rank;
};
