import type { Answer, AnswerCost, AnsweredMatter } from "@evenhand/shared/page-one";
import { type ReactNode, useDeferredValue } from "react";
import { useText } from "../../../strings/text";
import { Notice } from "../../../ui/Notice";
import { ClaimsSaid, Looked, NextSteps, Questions, Softened, Stops } from "./AnswerAside";
import { AnswerMatter } from "./AnswerMatter";
import styles from "./AnswerView.module.css";
import { CostSaid } from "./CostSaid";
import { DealersLine } from "./DealersLine";
import { Figures } from "./Figures";
import { stepsOf } from "./steps";

export interface AnswerWays {
  /** To a line, by its index. */
  readonly onOpen: (at: number) => void;
  /** To all the lines of a matter, by its place among all of them. */
  readonly onMatter: (place: number) => void;
  readonly comparison: string;
  /** Whoever buys is shown how lines stand with the dealer. */
  readonly buys: boolean;
  /** How a matter stands with the dealer; absent for whoever is no party to it. */
  readonly settling?: (one: AnsweredMatter) => ReactNode;
}

interface Props extends AnswerWays {
  readonly answer: Answer;
  /** Absent while it is asked for, and for whoever is shown none. */
  readonly cost?: AnswerCost;
}

interface ListProps extends AnswerWays {
  readonly matters: readonly AnsweredMatter[];
  readonly from: number;
  readonly unknown?: boolean;
  readonly cost?: AnswerCost;
}

const MatterList = ({ matters, from, ...rest }: ListProps) => (
  <ol className={styles.list} start={from}>
    {matters.map((one, index) => (
      <AnswerMatter key={`${one.matter.kind}@${one.matter.zone}`} one={one} number={from + index} {...rest} />
    ))}
  </ol>
);

/** Matters on the first screen of a phone, and one more. */
const FIRST = 2;

/** All of it; while the page is drawn for the first time only what the first screen shows, so that nobody waits for the rest. */
const useFirstScreen = <T,>(all: readonly T[]): readonly T[] => useDeferredValue(all, all.slice(0, FIRST));

const Wrong = ({ answer, ...rest }: Props) => {
  const t = useText();
  const shown = useFirstScreen(answer.matters);
  return (
    <section className={styles.matters}>
      <h2>{t("answer.matters")}</h2>
      {answer.matters.length === 0 ? (
        <p>{t("answer.matters.none")}</p>
      ) : (
        <MatterList matters={shown} from={1} {...rest} />
      )}
    </section>
  );
};

const Unknown = ({ answer, ...rest }: Props) => {
  const t = useText();
  if (answer.unknown.length === 0) return null;
  return (
    <section className={styles.unknown}>
      <h2>{t("answer.unknown")}</h2>
      <MatterList matters={answer.unknown} from={answer.matters.length + 1} unknown {...rest} />
    </section>
  );
};

const Careful = ({ cautions }: Pick<Answer, "cautions">) => {
  const t = useText();
  if (cautions.length === 0) return null;
  return (
    <details className={styles.cautions}>
      <summary>{t("answer.cautions", { count: cautions.length })}</summary>
      <Notice kind="caution" title={t("caution.before")}>
        <ul>
          {cautions.map(({ id, text }) => (
            <li key={id}>{text}</li>
          ))}
        </ul>
      </Notice>
    </details>
  );
};

/** What comes after the first screen of a phone, and beside it where there is room. */
const Beside = (props: Props) => {
  const { answer, cost } = props;
  const steps = stepsOf([...answer.matters, ...answer.unknown]);
  return (
    <>
      <Unknown {...props} />
      {steps.length > 0 && <NextSteps steps={steps} />}
      <Stops stops={answer.stops} />
      <CostSaid cost={cost} answer={answer} />
      <Questions questions={answer.questions} asks={answer.asks} />
      <ClaimsSaid claims={answer.claims} />
      <Softened soft={answer.soft} />
      <Looked looked={answer.looked} zone={answer.b.zone} />
    </>
  );
};

/** Page one of the comparison: what a buyer needs to stop or go on. The lines stand behind it. */
export const AnswerView = (props: Props) => {
  const { answer, cost } = props;
  const [first] = stepsOf([...answer.matters, ...answer.unknown]);
  const whole = useDeferredValue(true, false);
  return (
    <div className={styles.answer}>
      <Figures answer={answer} cost={cost} step={first} />
      <DealersLine claims={answer.claims} by={answer.a.organization} />
      <div className={styles.main}>
        <Wrong {...props} />
      </div>
      <div className={styles.beside}>{whole && <Beside {...props} />}</div>
      {whole && <Careful cautions={answer.cautions} />}
    </div>
  );
};
