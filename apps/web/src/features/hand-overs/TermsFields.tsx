import { useText } from "../../strings/text";
import { LongTextField, TextField } from "../../ui/Fields";
import type { TypedTerms } from "./terms-form";

interface FieldsProps {
  readonly fields: TypedTerms;
  readonly set: (change: Partial<TypedTerms>) => void;
}

/** Where the deadline stands, and its hour where it is known. */
const DeadlineFields = ({ fields, set }: FieldsProps) => {
  const t = useText();
  return (
    <>
      <TextField
        required
        maxLength={300}
        label={t("hand-over.deadline.source")}
        value={fields.source}
        onChange={(source) => set({ source })}
      />
      <TextField
        type="datetime-local"
        label={t("hand-over.deadline.until")}
        description={t("hand-over.deadline.until.what")}
        value={fields.claimUntil}
        onChange={(claimUntil) => set({ claimUntil })}
      />
    </>
  );
};

/** Words of the papers, with where they stand. */
export const TermsFields = ({ fields, set }: FieldsProps) => {
  const t = useText();
  return (
    <>
      <LongTextField
        maxLength={1000}
        label={t("hand-over.deadline")}
        value={fields.deadline}
        onChange={(deadline) => set({ deadline })}
      />
      {fields.deadline.trim() !== "" && <DeadlineFields fields={fields} set={set} />}
      <LongTextField
        maxLength={1000}
        label={t("hand-over.risk")}
        value={fields.risk}
        onChange={(risk) => set({ risk })}
      />
    </>
  );
};
