import { Button } from "@mantine/core";
import { useState } from "react";
import { useText } from "../../strings/text";
import { ChoiceField, TermField } from "../../ui/Fields";
import styles from "./Review.module.css";
import { acceptable, countsOf } from "./standing";
import type { Reviewing } from "./use-review";

export const SHOWN = ["made", "left", "all"] as const;
export type Shown = (typeof SHOWN)[number];

const LEASTS = ["0.95", "0.9", "0.8", "0.7", "0.5"] as const;

interface Props {
  readonly reviewing: Reviewing;
  readonly shown: Shown;
  readonly onShown: (shown: Shown) => void;
}

/** How far one has come, what is shown, and what one press may accept: it says how many before it is pressed. */
export const ReviewBar = ({ reviewing, shown, onShown }: Props) => {
  const t = useText();
  const [least, setLeast] = useState<string>("0.9");
  const { all, standing, accept } = reviewing;
  const counts = countsOf(all.map(standing));
  const sure = acceptable(all, Number(least), standing);
  return (
    <div className={styles.bar}>
      <output className={styles.counts}>{t("reading.counts", { ...counts })}</output>
      <TermField
        label={t("reading.show")}
        value={shown}
        terms={SHOWN}
        wordFor={(one) => t(`reading.show.${one}`)}
        onChange={onShown}
      />
      <ChoiceField
        label={t("reading.least")}
        value={least}
        data={LEASTS.map((value) => ({ value, label: t("reading.least.of", { share: Number(value) }) }))}
        onChange={setLeast}
      />
      <Button size="md" variant="default" disabled={sure.length === 0} onClick={() => void accept(sure)}>
        {t("reading.accept-all", { count: sure.length })}
      </Button>
    </div>
  );
};
