import type { FaultKind } from "@evenhand/shared/sheet";

/** Kinds of the sheet that are stages and names of one thing. */
export type Stages = {
  readonly kinds: ReadonlyMap<string, Pick<FaultKind, "family" | "rank" | "neverTrifling">>;
};

/** The family of a kind: stages and names of one thing. */
export const familyOf = (kind: string, { kinds }: Stages): string => kinds.get(kind)?.family ?? kind;

const stageOf = (kind: string, { kinds }: Stages): number => kinds.get(kind)?.rank ?? 0;

/**
 * Whether who denies a kind denies another one too: a stage of the same thing. Who says that nothing is rusted through has not said that
 * there is no rust; who says that there is none has said that nothing is rusted through, and that nothing bubbles.
 *
 * @example coversKind("corrosion", "perforation", frame) // true
 * @example coversKind("perforation", "corrosion", frame) // false
 */
export const coversKind = (denied: string, kind: string, frame: Stages): boolean =>
  denied === kind ||
  (familyOf(denied, frame) === familyOf(kind, frame) &&
    (frame.kinds.get(denied)?.neverTrifling !== true || stageOf(denied, frame) <= stageOf(kind, frame)));
