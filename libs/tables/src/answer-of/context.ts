import type { Answer } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import type { FaultKind, Item } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import type { Label } from "../label/index.ts";
import type { Value } from "../read-value/index.ts";

/** Why a value answers nothing. */
export type NoAnswer =
  | "no-number"
  | "several-figures"
  | "other-unit"
  | "not-plausible"
  | "no-such-word"
  | "several-answers"
  | "bad-but-not-how"
  | "no-scale"
  | "spreadsheet-error"
  | "nothing-said";

/** What was made of a value: an answer and how sure it is, or why there is none. */
export type Answered =
  | { readonly ok: true; readonly answer: Answer; readonly sure: boolean; readonly scale?: GradeScale }
  | { readonly ok: false; readonly why: NoAnswer };

/** What an answer is made from. */
export type Asked = {
  readonly item: Item;
  readonly value: Value;
  /** The row's and the column's names, whose words may choose an option (`Musty smell: Y`). */
  readonly labels: readonly Label[];
  /** What stands in the row's notes. */
  readonly note: string;
  readonly unit?: UnitSymbol | undefined;
  /** The scale of the column's grades, where the sheet has one. */
  readonly scale?: GradeScale | undefined;
  readonly faultKinds: ReadonlyMap<string, FaultKind>;
};

export const answered = (answer: Answer, sure = true): Answered => ({ ok: true, answer, sure });
export const unanswered = (why: NoAnswer): Answered => ({ ok: false, why });
