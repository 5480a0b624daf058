import { useText } from "../../strings/text";
import { TextField } from "../../ui/Fields";
import styles from "./Disputes.module.css";
import { PhotographsField } from "./PhotographsField";
import { isHalfRead, isWaitedFor, type SettleForm } from "./settle-form";
import type { Photographs } from "./use-photographs";

export interface Filling {
  readonly form: SettleForm;
  readonly onForm: (change: Partial<SettleForm>) => void;
}

/** A document by its name, and a reading with all that it needs. */
const NamedFields = ({ form, onForm }: Filling) => {
  const t = useText();
  return (
    <>
      <TextField
        className={styles.wide}
        label={t("settle.evidence.document")}
        description={t("settle.evidence.document.hint")}
        value={form.document}
        onChange={(document) => onForm({ document })}
      />
      {(["of", "value", "unit", "instrument"] as const).map((field) => (
        <TextField
          key={field}
          label={t(`settle.evidence.${field}`)}
          inputMode={field === "value" ? "decimal" : undefined}
          value={form[field]}
          onChange={(typed) => onForm({ [field]: typed })}
        />
      ))}
      {isHalfRead(form) && <p className={styles.lack}>{t("settle.evidence.half")}</p>}
    </>
  );
};

/** What goes with an answer beside its words; it stands open as long as photographs wait in it. */
export const EvidenceFields = ({
  form,
  onForm,
  photographs,
}: Filling & { readonly photographs: Photographs }) => {
  const t = useText();
  return (
    <>
      <details className={styles.more} open={photographs.waiting.length > 0 || undefined}>
        <summary>{t("settle.evidence")}</summary>
        <div className={styles.fields}>
          <PhotographsField of={photographs} />
          <NamedFields form={form} onForm={onForm} />
        </div>
      </details>
      {isWaitedFor(photographs.waiting) && <p className={styles.grounds}>{t("settle.photographs.waited")}</p>}
    </>
  );
};
