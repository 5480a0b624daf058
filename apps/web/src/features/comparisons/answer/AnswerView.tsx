import type { Answer, AnsweredMatter } from "@evenhand/matters/answer";
import { cautionsOf } from "@evenhand/sheet/cautions-of";
import type { ComparisonSource, Row } from "../../../entities/comparison/model";
import { Cautions } from "../../../entities/sheet/Cautions";
import { useText } from "../../../strings/text";
import { Loading } from "../../../ui/Loading";
import { ProblemNotice } from "../../../ui/ProblemNotice";
import { ClaimsSaid, Looked, NextSteps, Questions, Stops } from "./AnswerAside";
import { AnswerMatter } from "./AnswerMatter";
import styles from "./AnswerView.module.css";
import { stepsOf } from "./steps";
import { useAnswer } from "./use-answer";

interface Props {
  readonly source: ComparisonSource;
  readonly rows: readonly Row[];
  readonly onOpen: (at: number) => void;
}

interface ListProps extends Omit<Props, "source"> {
  readonly matters: readonly AnsweredMatter[];
  readonly from: number;
  readonly unknown?: boolean;
}

const MatterList = ({ matters, from, ...rest }: ListProps) => (
  <ol className={styles.list} start={from}>
    {matters.map((one, index) => (
      <AnswerMatter key={`${one.matter.kind}@${one.matter.zone}`} one={one} number={from + index} {...rest} />
    ))}
  </ol>
);

/** What has to be kept in mind by whoever looks again, opens something or drives. */
const TO_BE_CAREFUL = new Set(["look-again", "open-up", "do-not-drive"]);

const cautionsFor = (all: readonly AnsweredMatter[], { index }: ComparisonSource, rows: readonly Row[]) => {
  const careful = all.filter(({ matter }) => TO_BE_CAREFUL.has(matter.next.step));
  const items = careful.flatMap(({ matter }) => matter.lines.flatMap((at) => rows[at]?.entry.item ?? []));
  return cautionsOf(index.sheet, items).map(({ id }) => id);
};

const AnswerPage = ({ answer, source, rows, onOpen }: Props & { readonly answer: Answer }) => {
  const t = useText();
  const { matters, unknown } = answer;
  const all = [...matters, ...unknown];
  const cautions = cautionsFor(all, source, rows);
  return (
    <div className={styles.answer}>
      <div className={styles.main}>
        <Stops stops={answer.stops} />
        <section className={styles.matters}>
          <h2>{t("answer.matters")}</h2>
          {matters.length === 0 ? (
            <p>{t("answer.matters.none")}</p>
          ) : (
            <MatterList matters={matters} from={1} rows={rows} onOpen={onOpen} />
          )}
        </section>
      </div>
      <div className={styles.beside}>
        {all.length > 0 && <NextSteps steps={stepsOf(all)} />}
        {unknown.length > 0 && (
          <section className={styles.unknown}>
            <h2>{t("answer.unknown")}</h2>
            <MatterList matters={unknown} from={matters.length + 1} rows={rows} onOpen={onOpen} unknown />
          </section>
        )}
        <Questions questions={answer.questions} />
        <ClaimsSaid claims={answer.claims} />
        <Looked looked={answer.looked} />
        <section>
          <h2>{t("answer.cost")}</h2>
          <p className={styles.cost}>{t("answer.cost.where")}</p>
        </section>
      </div>
      {cautions.length > 0 && (
        <details className={styles.cautions}>
          <summary>{t("answer.cautions", { count: cautions.length })}</summary>
          <Cautions index={source.index} ids={cautions} />
        </details>
      )}
    </div>
  );
};

/** Page one of the comparison: what a buyer needs to stop or go on. The lines stand behind it. */
export const AnswerView = (props: Props) => {
  const { data: answer, error } = useAnswer(props.source);
  if (answer === undefined) return error === null ? <Loading /> : <ProblemNotice error={error} />;
  return <AnswerPage {...props} answer={answer} />;
};
