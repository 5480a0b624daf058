import { Button, NativeSelect } from "@mantine/core";
import type { FaultKind } from "@evenhand/shared/sheet";
import { IconPlus } from "@tabler/icons-react";
import { useState } from "react";
import { useText } from "../../strings/text";
import styles from "./Answers.module.css";

interface Props {
  readonly kinds: readonly FaultKind[];
  /** Every kind stands there to be pressed, where one hand is free. */
  readonly atOnce: boolean;
  readonly onKind: (kind: string) => void;
}

const KindButtons = ({ kinds, onKind }: Omit<Props, "atOnce">) => {
  const t = useText();
  return (
    <fieldset className={styles.kinds}>
      <legend className="only-read">{t("faults.which")}</legend>
      {kinds.map(({ id, words }) => (
        <Button key={id} variant="default" size="md" onClick={() => onKind(id)}>
          {words.american}
        </Button>
      ))}
    </fieldset>
  );
};

const KindChoice = ({ kinds, onKind, onEnd }: Omit<Props, "atOnce"> & { readonly onEnd: () => void }) => {
  const t = useText();
  return (
    <div className={styles.under}>
      <NativeSelect
        size="md"
        label={t("faults.which")}
        value=""
        data={[
          { value: "", label: t("faults.choose") },
          ...kinds.map(({ id, words }) => ({ value: id, label: words.american })),
        ]}
        onChange={(event) => {
          onKind(event.currentTarget.value);
          onEnd();
        }}
      />
      <Button variant="subtle" onClick={onEnd}>
        {t("cancel")}
      </Button>
    </div>
  );
};

/** A fault begins with its kind: until one is chosen nothing is said and nothing is kept. */
export const NewFault = ({ kinds, atOnce, onKind }: Props) => {
  const t = useText();
  const [choosing, setChoosing] = useState(false);
  if (kinds.length === 0) return null;
  if (atOnce) return <KindButtons kinds={kinds} onKind={onKind} />;
  if (choosing) return <KindChoice kinds={kinds} onKind={onKind} onEnd={() => setChoosing(false)} />;
  return (
    <Button
      variant="default"
      leftSection={<IconPlus size={16} aria-hidden="true" />}
      onClick={() => setChoosing(true)}
      style={{ justifySelf: "start" }}
    >
      {t("faults.add")}
    </Button>
  );
};
