import type { Answer, AnswerKind, AnswerOf } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import type { Unread } from "../../offline/store";
import type { SheetIndex } from "../sheet/sheet-index";

/** What every editor of an answer gets: the item asked, the answer so far, and where to say the new one. */
export interface EditorProps<K extends AnswerKind> {
  readonly item: Item;
  readonly index: SheetIndex;
  readonly scales: readonly GradeScale[];
  /** Unique on the page: names of radio groups are made from it. */
  readonly name: string;
  readonly answer: AnswerOf<K> | undefined;
  /** The unit a new reading is typed in, where it is not the sheet's own. */
  readonly unit?: UnitSymbol | undefined;
  /** What was typed here and cannot be read. */
  readonly unread: Unread | undefined;
  /** `null` takes the answer back; `unread` is what was typed and cannot be read, and stays. */
  readonly onChange: (answer: Answer | null, unread?: Unread) => void;
  /** Instead of `onChange` for an answer that was pressed with finger or mouse and is whole as it is. */
  readonly onPick?: ((answer: Answer) => void) | undefined;
}
