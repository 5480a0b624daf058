import type { VehicleForm } from "@evenhand/shared/report";
import { captionCues } from "../caption-cues/index.ts";
import type { CaptionCues } from "../caption-cues/index.ts";
import type { DraftContext } from "../draft-statement/context.ts";
import { draftStatement } from "../draft-statement/index.ts";
import type { Remark } from "../draft-statement/index.ts";
import { spokenForm } from "../spoken-form/index.ts";
import { spokenText } from "../spoken-text/index.ts";
import type { SpokenText } from "../spoken-text/index.ts";

type Unread = Extract<CaptionCues, { ok: false }>;

/** What a caption file says, and what of it is a claim. */
export type CaptionsRead =
  | {
      readonly ok: true;
      /** In which form the file was written. */
      readonly written: Extract<CaptionCues, { ok: true }>["form"];
      readonly spoken: SpokenText;
      /** The car's form: as it was given, else as it can be told from the words. */
      readonly form: VehicleForm;
      readonly remarks: readonly Remark[];
    }
  | Unread;

/**
 * Reads a caption file from its characters to its claims, or says why it cannot be read and what would work.
 *
 * @param context the car's form is `undefined` where nobody has entered the car
 * @example
 * readCaptions("Hello.", { sheet, compiled, form: undefined, year: 2026 }).ok; // false: no words with times were found
 */
export const readCaptions = (
  file: string,
  { form: entered, ...context }: Omit<DraftContext, "form"> & { readonly form: VehicleForm | undefined },
): CaptionsRead => {
  const read = captionCues(file);
  if (!read.ok) return read;
  const spoken = spokenText(
    read.cues,
    (word) =>
      context.compiled.root.next.get(word)?.meanings.some(({ is }) => is === "subject" || is === "side") ===
      true,
  );
  const form = entered ?? spokenForm(spoken.text);
  return {
    ok: true,
    written: read.form,
    spoken,
    form,
    remarks: draftStatement(spoken, { ...context, form }),
  };
};
