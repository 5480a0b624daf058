import type { CaseParty, CaseWait } from "@evenhand/shared/http/cases";
import type { ReactNode } from "react";
import { useIntl } from "react-intl";
import { stepPlaces } from "../../entities/case/step-places";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import styles from "./Cases.module.css";
import { dayAndHour } from "../../entities/time/day-and-hour";

/** Whose a line is: filled is one's own, outlined another's, none where nothing is open. */
export type Whose = "yours" | "others" | "nobody";

export const whoseIs = (wait: CaseWait | null, as: CaseParty): Whose => {
  if (wait === null) return "nobody";
  return wait.of === as ? "yours" : "others";
};

interface LineProps {
  readonly whose: Whose;
  /** On the left of the spine: until when, or since when. */
  readonly time: ReactNode;
  readonly title: ReactNode;
  readonly children?: ReactNode;
  readonly press?: ReactNode;
  /** What its car looks like. */
  readonly cover?: ReactNode;
}

/** A line on the spine: when, whose, what, and the press for it. */
export const SpineLine = ({ whose, time, title, children, press, cover }: LineProps) => (
  <li className={styles.line}>
    <span className={`${styles.time} figures`}>{time}</span>
    <span className={styles.spine} aria-hidden="true">
      {whose !== "nobody" && <span className={whose === "yours" ? styles.filled : styles.outlined} />}
    </span>
    <div className={styles.what}>
      <div className={styles.said}>
        <div className={styles.title}>{title}</div>
        {children}
      </div>
      {cover}
    </div>
    {press !== undefined && <div className={styles.press}>{press}</div>}
  </li>
);

/** A moment on the reader's own clock, to the minute, with the zone: a visit is shown on the site's elsewhere. */
export const useMoment = (): ((at: string) => string) => {
  const intl = useIntl();
  return (at) => intl.formatDate(at, dayAndHour);
};

/** When the answer is due, or the hour itself. */
export const useDue = (): ((wait: CaseWait) => string) => {
  const t = useText();
  const moment = useMoment();
  return ({ step, until }) =>
    until === null
      ? ""
      : t(step === "inspect" || step === "seal" ? "case.at" : "case.by", { when: moment(until) });
};

export const useSentence = (as: CaseParty): ((wait: CaseWait) => string) => {
  const t = useText();
  return ({ step, of, count }) => t(`case.step.${step}.${of === as ? "yours" : "theirs"}`, { count });
};

/** The one press for what is one's own. */
export const StepPress = ({
  wait,
  strong = false,
}: {
  readonly wait: CaseWait;
  readonly strong?: boolean;
}) => {
  const t = useText();
  return (
    <LinkButton {...stepPlaces[wait.step](wait.subject)} variant={strong ? "filled" : "default"}>
      {t(`case.step.${wait.step}.do`)}
    </LinkButton>
  );
};
