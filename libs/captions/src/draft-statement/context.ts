import type { CompiledLexicon } from "@evenhand/lexicon/compile-lexicon";
import type { VehicleForm } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";

/** What a draft is made by. */
export type DraftContext = {
  readonly sheet: Sheet;
  readonly compiled: CompiledLexicon;
  readonly form: VehicleForm;
  /** Year it was said in, for "from 2016". */
  readonly year: number;
};
