import { Button } from "@mantine/core";
import type { Report } from "@evenhand/shared/report";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { answerWords } from "../../../entities/sheet/answer-text";
import type { Place } from "../../../entities/sheet/places";
import type { SheetIndex } from "../../../entities/sheet/sheet-index";
import type { Said, Together as OnePress } from "../walk";
import styles from "./Walk.module.css";

interface Props extends OnePress {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly onSay: (said: readonly Said[]) => void;
}

/** The same as across the car, of all that is open here. */
const AsAcross = ({ like, report, index, onSay }: Props) => {
  const t = useText();
  if (like === undefined) return null;
  const words = ({ place: { item }, answer }: Said): string =>
    `${item.words.american}: ${answerWords({ index, item, scales: report.scales }, answer).text}`;
  return (
    <div>
      <Button size="md" variant="light" onClick={() => onSay(like.said)}>
        {t("walk.like", { place: like.of, count: like.said.length })}
      </Button>
      <p>{like.said.map(words).join("; ")}</p>
    </div>
  );
};

const nameOf = ({ item, words }: Place): string => (words === "" ? item.words.american : words);

const AllWork = ({ working, onSay }: Props) => {
  const t = useText();
  const intl = useIntl();
  if (working.length === 0) return null;
  const answer = { kind: "working", value: "yes" } as const;
  return (
    <div>
      <Button size="md" variant="light" onClick={() => onSay(working.map((place) => ({ place, answer })))}>
        {t("walk.work", { count: working.length })}
      </Button>
      <p>{intl.formatList(working.map(nameOf), { type: "unit" })}</p>
    </div>
  );
};

/** One press for several lines: all of these work, the same as across the car. What it says is named beside it. */
export const Together = (props: Props) =>
  props.working.length > 0 || props.like !== undefined ? (
    <div className={styles.together}>
      <AsAcross {...props} />
      <AllWork {...props} />
    </div>
  ) : null;
