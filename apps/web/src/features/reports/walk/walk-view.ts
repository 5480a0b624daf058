import type { CautionsRead } from "@evenhand/shared/report";
import type { Stage } from "@evenhand/shared/sheet";
import type { SheetSearch } from "../sheet-search";
import {
  nextOpen,
  progressOf,
  stageAt,
  wholeProgress,
  type Extent,
  type Findings,
  type Progress,
  type WalkStage,
} from "../walk";

/** The walk as it stands: its stages, the one shown, and how much of each is answered. */
export interface WalkView {
  readonly walk: readonly WalkStage[];
  readonly stage: WalkStage;
  readonly number: number;
  /** The stage after this one. */
  readonly following: WalkStage | undefined;
  readonly parts: ReadonlyMap<Stage, Progress>;
  readonly whole: Progress;
  /** When this stage's cautions were read: an empty text where it has none, nothing where they are still to be read. */
  readonly read: string | undefined;
}

const readAt = ({ stage, cautions }: WalkStage, cautionsRead: readonly CautionsRead[]): string | undefined =>
  cautions.length === 0 ? "" : cautionsRead.find((each) => each.stage === stage)?.time;

/** @returns nothing where nothing is walked */
export const walkView = (
  walk: readonly WalkStage[],
  wanted: Stage | undefined,
  findings: Findings,
  cautionsRead: readonly CautionsRead[],
): WalkView | undefined => {
  const stage = stageAt(walk, wanted);
  if (stage === undefined) return undefined;
  const at = walk.indexOf(stage);
  const parts = new Map(walk.map((one) => [one.stage, progressOf(one, findings)] as const));
  return {
    walk,
    stage,
    number: at + 1,
    following: walk[at + 1],
    parts,
    whole: wholeProgress([...parts.values()]),
    read: readAt(stage, cautionsRead),
  };
};

/** What a person does to move about the walk. */
export type WalkMove =
  | { readonly type: "stage"; readonly stage: Stage }
  | { readonly type: "extent"; readonly extent: Extent }
  | { readonly type: "sections" }
  /** The cautions at this stage's gate were read. */
  | { readonly type: "begin" }
  /** To a line of any stage. */
  | { readonly type: "line"; readonly place: string | undefined };

/**
 * What changes of the address on a move: a stage opens at its first open line, never behind a gate whose cautions were not read.
 */
export const walkSearchAfter = (
  { walk, stage }: Pick<WalkView, "walk" | "stage">,
  findings: Findings,
  cautionsRead: readonly CautionsRead[],
  move: WalkMove,
): SheetSearch => {
  const firstOf = (one: WalkStage): string | undefined => nextOpen(one.lines, findings, undefined)?.key;
  switch (move.type) {
    case "stage": {
      const there = stageAt(walk, move.stage);
      const isPast = there !== undefined && readAt(there, cautionsRead) !== undefined;
      return { stage: move.stage, open: isPast ? firstOf(there) : undefined };
    }
    case "extent":
      return { extent: move.extent, open: undefined };
    case "sections":
      return { view: "sections", stage: undefined, open: undefined };
    case "begin":
      return { stage: stage.stage, open: firstOf(stage) };
    case "line": {
      const there = walk.find(({ lines }) => lines.some(({ key }) => key === move.place));
      return { stage: there?.stage, open: move.place };
    }
  }
};
