import type { Answer } from "@evenhand/shared/answer";
import type { GradeScale, VehicleForm } from "@evenhand/shared/report";
import type { FaultKind, Item, Sheet } from "@evenhand/shared/sheet";
import type { NoAnswer } from "../answer-of/context.ts";

/** Why something in a row became no finding. */
export type RefusedBecause = NoAnswer | "no-item" | "no-place" | "twice";

/** An item, its places and an answer that a claim may mean. */
export type Meant = {
  readonly item: Item;
  readonly positions: readonly string[];
  readonly answer: Answer;
  readonly scale?: GradeScale;
  /** 0 to 1: how well the name fits, and whether the value answers the item. */
  readonly confidence: number;
  /** How much of what is written the item's name accounts for. */
  readonly share: number;
  readonly sure: boolean;
  /** It says that something is wrong. */
  readonly bad?: boolean;
};

export type Proposal =
  | { readonly ok: true; readonly meant: readonly Meant[] }
  | { readonly ok: false; readonly why: RefusedBecause; readonly item?: string };

/** What reading goes by. */
export type Reading = {
  readonly sheet: Sheet;
  readonly form?: VehicleForm | undefined;
  /** What the sheet says of the side of its wheel, where the form is not known. */
  readonly rightHandDrive?: boolean | undefined;
  /** Whether the sheet calls the lid over the engine a bonnet: then its hood is the soft top, and else the lid. */
  readonly saysBonnet?: boolean | undefined;
  readonly faultKinds: ReadonlyMap<string, FaultKind>;
  /** Words of the headings above, and the sections they are about. */
  readonly around: readonly string[];
  readonly sections: readonly string[];
  readonly scale?: GradeScale | undefined;
};
