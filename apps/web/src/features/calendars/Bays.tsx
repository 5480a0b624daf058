import { Button } from "@mantine/core";
import { replaced, without } from "../../service/rows";
import { useText } from "../../strings/text";
import { TextField } from "../../ui/Fields";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import styles from "./Calendars.module.css";
import { newBay, type BayTyped } from "./site-form";

interface Props {
  readonly value: readonly BayTyped[];
  readonly onChange: (value: readonly BayTyped[]) => void;
}

/** The lifts of a site by name. */
export const Bays = ({ value, onChange }: Props) => {
  const t = useText();
  return (
    <Panel title={t("site.bays")} hint={t("site.bays.hint")}>
      <Notice kind="caution">
        <p>{t("site.bay.caution")}</p>
      </Notice>
      {value.map((bay, index) => (
        <div key={bay.key} className={styles.fields}>
          <TextField
            required
            label={t("site.bay", { number: index + 1 })}
            value={bay.name}
            onChange={(name) => onChange(replaced(value, { ...bay, name }))}
          />
          <Button variant="default" size="md" onClick={() => onChange(without(value, bay.key))}>
            {t("hours-edit.remove")}
          </Button>
        </div>
      ))}
      <div>
        <Button variant="default" onClick={() => onChange([...value, newBay()])}>
          {t("site.bay.add")}
        </Button>
      </div>
    </Panel>
  );
};
