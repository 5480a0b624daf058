import { Button } from "@mantine/core";
import type { Report } from "@evenhand/shared/report";
import type { KeptFinding } from "../../offline/store";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { answerWords } from "../../entities/sheet/answer-text";
import type { Place } from "../../entities/sheet/places";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import styles from "./Conflict.module.css";
import type { Draft } from "../../offline/use-draft";

interface Props {
  readonly kept: KeptFinding;
  readonly place: Place;
  readonly report: Report;
  readonly index: SheetIndex;
  readonly onSettle: Draft["settle"];
}

/** Two devices changed one finding: both versions are shown, and the person says which stands. */
export const Conflict = ({ kept, place, report, index, onSettle }: Props) => {
  const t = useText();
  const words = (finding: KeptFinding["finding"]): string =>
    finding
      ? answerWords({ index, item: place.item, scales: report.scales }, finding.answer).text
      : t("conflict.removed");
  return (
    <Notice kind="refusal" title={t("conflict.title")}>
      <div className={styles.sides}>
        <div>
          <p className={styles.label}>{t("conflict.mine")}</p>
          <p>{words(kept.finding)}</p>
          <Button onClick={() => void onSettle(kept, "mine")}>{t("conflict.keep-mine")}</Button>
        </div>
        <div>
          <p className={styles.label}>{t("conflict.theirs")}</p>
          <p>{words(kept.theirs ?? null)}</p>
          <Button variant="default" onClick={() => void onSettle(kept, "theirs")}>
            {t("conflict.keep-theirs")}
          </Button>
        </div>
      </div>
    </Notice>
  );
};
