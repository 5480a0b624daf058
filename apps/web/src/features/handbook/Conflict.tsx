import { Button } from "@mantine/core";
import { isLimitId, limits } from "@evenhand/handbook/limits";
import type { FirmHandbook } from "@evenhand/shared/cross-check";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { differences, type Difference } from "./own-handbook";
import styles from "./OwnFigures.module.css";
import { useFigure } from "./use-figure";
import { spelled } from "../../entities/sheet/sheet-index";

interface Props {
  readonly mine: FirmHandbook;
  readonly theirs: FirmHandbook;
  readonly onMine: () => void;
  readonly onTheirs: () => void;
}

const useDifferenceText = (): ((difference: Difference) => string) => {
  const t = useText();
  const { figure } = useFigure();
  return (difference) => {
    if (difference.what !== "limit") return t(`own.conflict.${difference.what}`, { name: difference.name });
    const { id, mine, theirs } = difference;
    const limit = isLimitId(id) ? limits[id] : undefined;
    const text = (value: number | undefined): string => {
      if (value === undefined) return t("own.conflict.limit.handbook");
      return Number.isNaN(value) ? t("own.conflict.limit.none") : figure(value, limit?.unit ?? "1");
    };
    return t("own.conflict.limit", {
      words: limit?.words ?? spelled(id),
      mine: text(mine),
      theirs: text(theirs),
    });
  };
};

/** Somebody else saved while this was typed: what parts the two, and the choice between them. */
export const Conflict = ({ mine, theirs, onMine, onTheirs }: Props) => {
  const t = useText();
  const textOf = useDifferenceText();
  const apart = differences(mine, theirs);
  return (
    <Notice kind="refusal" title={t("own.conflict")}>
      <p>{t(apart.length === 0 ? "own.conflict.same" : "own.conflict.what")}</p>
      {apart.length > 0 && (
        <ul className={styles.apart}>
          {apart.map((difference) => (
            <li key={textOf(difference)}>{textOf(difference)}</li>
          ))}
        </ul>
      )}
      <div className={styles.buttons}>
        <Button variant="default" onClick={onMine}>
          {t("own.conflict.mine")}
        </Button>
        <Button variant="default" onClick={onTheirs}>
          {t("own.conflict.theirs")}
        </Button>
      </div>
    </Notice>
  );
};
