import { SegmentedControl, TextInput } from "@mantine/core";
import { useText } from "../../strings/text";
import type { LinesShown } from "./reader";
import styles from "./Reader.module.css";

interface Props {
  readonly show: LinesShown;
  /** Nothing: all of them. */
  readonly onShow: (show: "answered" | "silent" | undefined) => void;
  readonly q: string;
  readonly onQ: (q: string) => void;
}

/** Which lines of a report are shown, and a search in them. */
export const ReaderControls = ({ show, onShow, q, onQ }: Props) => {
  const t = useText();
  return (
    <div className={`${styles.controls} no-print`}>
      <SegmentedControl
        aria-label={t("reader.show")}
        value={show}
        onChange={(next) => onShow(next === "answered" || next === "silent" ? next : undefined)}
        data={(["all", "answered", "silent"] as const).map((value) => ({
          value,
          label: t(`reader.show.${value}`),
        }))}
      />
      <TextInput
        type="search"
        aria-label={t("reader.search")}
        placeholder={t("reader.search")}
        value={q}
        onChange={(event) => onQ(event.currentTarget.value)}
      />
    </div>
  );
};
