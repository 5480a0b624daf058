import { Button } from "@mantine/core";
import { useText } from "../../strings/text";
import { capital } from "../../entities/sheet/sheet-index";
import type { SheetMove, SheetView } from "./sheet-view";
import styles from "./Sheet.module.css";

interface Props {
  readonly view: SheetView;
  readonly onMove: (move: SheetMove) => void;
}

/** Back to the section before this one, on to the one after it. */
export const SectionTurn = ({ view: { before, after }, onMove }: Props) => {
  const t = useText();
  return (
    <div className={styles.turn}>
      {before && (
        <Button variant="default" size="md" onClick={() => onMove({ type: "section", section: before.id })}>
          {t("sheet.before", { title: capital(before.words.american) })}
        </Button>
      )}
      {after && (
        <Button size="md" onClick={() => onMove({ type: "section", section: after.id })}>
          {t("sheet.after", { title: capital(after.words.american) })}
        </Button>
      )}
    </div>
  );
};
