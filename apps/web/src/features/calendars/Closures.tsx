import { Button } from "@mantine/core";
import { replaced, without } from "../../service/rows";
import { useText } from "../../strings/text";
import { TextField } from "../../ui/Fields";
import { Panel } from "../../ui/Page";
import styles from "./Calendars.module.css";
import { newClosure, type ClosureTyped } from "./site-form";

interface RowProps {
  readonly closure: ClosureTyped;
  readonly onChange: (closure: ClosureTyped) => void;
}

const ClosureFields = ({ closure, onChange }: RowProps) => {
  const t = useText();
  return (
    <>
      {(["from", "until"] as const).map((end) => (
        <TextField
          key={end}
          type="datetime-local"
          required
          label={t(`site.closure.${end}`)}
          value={closure[end].slice(0, 16)}
          onChange={(typed) => onChange({ ...closure, [end]: typed })}
        />
      ))}
      <TextField
        label={t("site.closure.note")}
        maxLength={200}
        value={closure.note}
        onChange={(note) => onChange({ ...closure, note })}
      />
    </>
  );
};

interface Props {
  readonly value: readonly ClosureTyped[];
  readonly zone: string;
  readonly onChange: (value: readonly ClosureTyped[]) => void;
}

/** Stretches in which nobody comes to the cars. */
export const Closures = ({ value, zone, onChange }: Props) => {
  const t = useText();
  return (
    <Panel title={t("site.closures")} hint={t("site.closures.hint")}>
      {value.map((one, index) => (
        <fieldset key={one.key} className={styles.row}>
          <legend>{t("site.closure.group", { number: index + 1 })}</legend>
          <div className={`${styles.fields} ${styles.wide}`}>
            <ClosureFields closure={one} onChange={(next) => onChange(replaced(value, next))} />
            <Button variant="default" size="md" onClick={() => onChange(without(value, one.key))}>
              {t("hours-edit.remove")}
            </Button>
          </div>
        </fieldset>
      ))}
      <div>
        <Button variant="default" onClick={() => onChange([...value, newClosure(zone)])}>
          {t("site.closure.add")}
        </Button>
      </div>
    </Panel>
  );
};
