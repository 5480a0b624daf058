import { Button } from "@mantine/core";
import type { Answer } from "@evenhand/shared/answer";
import type { Report } from "@evenhand/shared/report";
import { useText } from "../../../strings/text";
import { answerWords } from "../../../entities/sheet/answer-text";
import type { Place } from "../../../entities/sheet/places";
import type { SheetIndex } from "../../../entities/sheet/sheet-index";
import type { Said } from "../walk";
import styles from "./Walk.module.css";

/** What was said of another place of the same item, and may be said here again. */
export interface Alike {
  readonly place: Place;
  readonly answer: Answer;
  /** Places of the item still open in this stage, this one left out. */
  readonly others: readonly Place[];
}

interface Props {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly place: Place;
  readonly alike: Alike;
  readonly onNext: (key: string, besides?: readonly Place[]) => void;
  readonly onSay: (said: readonly Said[]) => void;
}

/** The same as at another place, said here with one press, or here and at all that are open. */
export const SayAgain = ({ report, index, place, alike, onSay, onNext }: Props) => {
  const t = useText();
  const { answer, others } = alike;
  const said = answerWords({ index, item: place.item, scales: report.scales }, answer).text;
  const say = (places: readonly Place[]): void => {
    onSay(places.map((one) => ({ place: one, answer })));
    onNext(place.key, places);
  };
  return (
    <div className={styles.again}>
      <Button size="md" variant="light" onClick={() => say([place])}>
        {t("walk.same", { place: alike.place.words, answer: said })}
      </Button>
      {others.length > 0 && (
        <Button size="md" variant="default" onClick={() => say([place, ...others])}>
          {t("walk.same.all", { count: others.length + 1, answer: said })}
        </Button>
      )}
    </div>
  );
};
