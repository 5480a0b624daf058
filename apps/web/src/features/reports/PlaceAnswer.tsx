import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { callOf } from "@evenhand/sheet/call";
import { useText } from "../../strings/text";
import { AnswerEditor } from "../../entities/answer/AnswerEditor";
import { useEnterKey } from "../../entities/answer/use-enter-key";
import type { Place } from "../../entities/sheet/places";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { usualUnit } from "./fitting-instrument";
import type { EditStep, PlaceEdit } from "./place-edit";
import styles from "./PlaceEditor.module.css";

interface Props {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly place: Place;
  readonly edit: PlaceEdit;
  readonly lastRead: Pick<Finding, "answer"> | undefined;
  readonly walked: boolean;
  readonly onStep: (step: EditStep) => void;
  readonly onNext: () => void;
}

/** Where one thing is bad one stays: it wants words and a picture. */
const isBad = (answer: Answer, { item, position }: Place, report: Report, index: SheetIndex): boolean => {
  const { scales, vehicle } = report;
  const call = callOf(answer, item, { position, scales, form: vehicle.form, faultKinds: index.faultKinds });
  return call !== "good" && call !== "no-yardstick";
};

/** With what a reading is taken, where the grounds are folded away. */
const Gauge = ({ name }: { readonly name: string | undefined }) => {
  const t = useText();
  return (
    <p className={styles.gauge}>
      {name === undefined ? t("place.read-by-eye") : t("place.read-with", { instrument: name })}
    </p>
  );
};

/** The answer itself; where lines are walked, one that is whole and not bad leads on. */
export const PlaceAnswer = ({ report, index, place, edit, lastRead, walked, onStep, onNext }: Props) => {
  const { item } = place;
  const { answer, notSeen } = edit;
  const fields = useEnterKey(onNext);
  const gauge = report.instruments.find(({ id }) => id === edit.grounds.instrument);
  const pick = (picked: Answer): void => {
    onStep({ type: "answer", answer: picked });
    if (!isBad(picked, place, report, index)) onNext();
  };
  return (
    <>
      <div ref={fields}>
        <AnswerEditor
          key={`${notSeen}${edit.anew}`}
          item={item}
          index={index}
          scales={report.scales}
          name={place.key}
          answer={answer ?? undefined}
          unread={edit.unread}
          unit={usualUnit(item, gauge, lastRead)}
          notSeen={notSeen}
          onChange={(next, unread) => onStep({ type: "answer", answer: next, unread })}
          onPick={walked ? pick : undefined}
        />
      </div>
      {walked && item.answer === "reading" && !notSeen && <Gauge name={gauge?.name} />}
    </>
  );
};
