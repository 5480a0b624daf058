import { Button } from "@mantine/core";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { KeptFinding } from "../../offline/store";
import { useText } from "../../strings/text";
import { PlaceFiles } from "../../entities/evidence/PlaceFiles";
import type { Place } from "../../entities/sheet/places";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { AskedAgain } from "./AskedAgain";
import { Grounds } from "./Grounds";
import { useAskedAgain } from "./look-again";
import { OwnChecks } from "./OwnChecks";
import { PlaceAnswer } from "./PlaceAnswer";
import { PlaceButtons } from "./PlaceButtons";
import styles from "./PlaceEditor.module.css";
import { PlaceTrouble } from "./PlaceTrouble";
import type { EditStep, PlaceEdit } from "./place-edit";
import type { Draft } from "../../offline/use-draft";
import { usePlaceEdit } from "./use-place-edit";

/** How a place is kept on this device. */
export type Keeping = Pick<Draft, "keep" | "settle">;

interface Props extends Keeping {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly place: Place;
  readonly kept: KeptFinding | undefined;
  readonly checks: readonly CrossCheck[];
  /** What was used last for this kind of reading: instrument, conditions. */
  readonly last: Pick<Finding, "instrument" | "conditions"> | undefined;
  /** The last reading of this item at another place. */
  readonly lastRead: Pick<Finding, "answer"> | undefined;
  readonly onNext: () => void;
  /** Walked line by line: an answer that is whole and not bad leads on, and the grounds fold away. */
  readonly walked?: boolean;
}

interface Edited {
  readonly edit: PlaceEdit;
  readonly onStep: (step: EditStep) => void;
}

/** The grounds of what was said; where one walks they fold away. */
const PlaceGrounds = ({ report, index, place, walked, edit, onStep }: Props & Edited) => {
  const t = useText();
  if (edit.notSeen || edit.answer === null || edit.answer.kind === "not-fitted") return null;
  const grounds = (
    <Grounds
      key={edit.anew}
      index={index}
      item={place.item}
      grounds={edit.grounds}
      unread={edit.conditions}
      instruments={report.instruments}
      onChange={(change) => onStep({ type: "grounds", change })}
      onUnread={(id, text) => onStep({ type: "condition", id, text })}
    />
  );
  if (walked !== true) return grounds;
  return (
    <details className={styles.grounds}>
      <summary>{t("place.grounds")}</summary>
      {grounds}
    </details>
  );
};

/** What was cleared or replaced stays in reach. */
const PlaceUndo = ({ edit, onStep }: Edited) => {
  const t = useText();
  if (edit.before === null) return null;
  return (
    <output className={styles.undo}>
      {t("place.undo.what")}
      <Button variant="default" size="compact-md" onClick={() => onStep({ type: "undo" })}>
        {t("place.undo")}
      </Button>
    </output>
  );
};

/** One line of the sheet, open: the answer, its grounds, and on to the next. Every change is kept on this device at once. */
export const PlaceEditor = (props: Props) => {
  const { report, index, place, kept, checks, last, lastRead, keep, settle, onNext, walked = false } = props;
  const again = useAskedAgain(place.key);
  const { edit, step, keepAgain } = usePlaceEdit({ report, place, kept, last, keep, again });
  const edited = { edit, onStep: step };
  const shown = { report, index, place };
  return (
    <div className={styles.editor}>
      <PlaceTrouble {...shown} kept={kept} onSettle={settle} onAgain={keepAgain} />
      {again && <AskedAgain {...edited} />}
      <PlaceAnswer {...shown} {...edited} lastRead={lastRead} walked={walked} onNext={onNext} />
      <OwnChecks checks={checks} />
      <PlaceGrounds {...props} {...edited} />
      <PlaceFiles place={{ item: place.item.id, position: place.position }} />
      <PlaceUndo {...edited} />
      <PlaceButtons
        {...edited}
        equipment={place.item.equipment === true}
        clears={!again}
        walked={walked}
        onNext={onNext}
      />
    </div>
  );
};
