import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { Empty, Panel } from "../../../ui/Page";
import { capital, spelled } from "../../../entities/sheet/sheet-index";
import type { ComparisonSource, Row } from "../../../entities/comparison/model";
import { decisive } from "../../../entities/comparison/terms";
import { useSeverityWords } from "../../../entities/comparison/use-severity-words";
import { Coverage } from "./Coverage";
import { StatisticRow } from "./StatisticRow";
import styles from "./Whole.module.css";
import { Worklist } from "./Worklist";

interface Props {
  readonly source: ComparisonSource;
  readonly rows: readonly Row[];
  readonly onOpen: (at: number) => void;
}

/** What a purchase can turn on and nobody saw, by name, gravest first: the first thing to ask for. */
const Unseen = ({ rows, onOpen }: Pick<Props, "rows" | "onOpen">) => {
  const t = useText();
  const severityWords = useSeverityWords();
  const grave = rows.filter(({ entry }) => entry.outcome === "unseen" && decisive.has(entry.severity));
  return (
    <Panel title={t("whole.unseen")} hint={t("whole.unseen.hint")}>
      {grave.length === 0 ? (
        <Empty title={t("whole.unseen.none")} />
      ) : (
        <ul className={styles.unseen}>
          {grave.map((row) => (
            <li key={row.at}>
              <button type="button" onClick={() => onOpen(row.at)}>
                {capital([row.name, row.place].filter((part) => part !== "").join(", "))}
              </button>
              <span>
                {severityWords(row.entry)}
                {row.b?.answer.kind === "not-seen"
                  ? ` · ${t(`not-seen.${row.b.answer.reason}`)}`
                  : ` · ${t("whole.unseen.silent")}`}
              </span>
            </li>
          ))}
        </ul>
      )}
    </Panel>
  );
};

const Leaning = ({ source }: Pick<Props, "source">) => {
  const t = useText();
  const intl = useIntl();
  const { bias } = source.comparison;
  const p = bias.signTestP;
  return (
    <Panel title={t("whole.bias")} hint={t("whole.bias.hint")}>
      <table className={styles.statistics}>
        <tbody>
          <StatisticRow
            name={t("whole.steps")}
            hint={t("whole.steps.hint")}
            statistic={bias.meanStep}
            range={[-2, 2]}
          />
          <StatisticRow
            name={t("whole.shift")}
            hint={t("whole.shift.hint")}
            statistic={bias.shift}
            range={[-2, 2]}
          />
        </tbody>
      </table>
      <p className={styles.line}>
        {p === null
          ? t("whole.sign.none")
          : t(p < 0.001 ? "whole.sign.small" : "whole.sign", {
              p: intl.formatNumber(p, { maximumSignificantDigits: 2 }),
            })}
      </p>
    </Panel>
  );
};

const Agreement = ({ source }: Pick<Props, "source">) => {
  const t = useText();
  const { agreement } = source.comparison;
  return (
    <Panel title={t("whole.agreement")} hint={t("whole.agreement.hint", { n: agreement.n })}>
      <table className={styles.statistics}>
        <tbody>
          <StatisticRow
            name={t("whole.observed")}
            hint={t("whole.observed.hint")}
            statistic={agreement.observed}
            range={[0, 1]}
            unit="share"
          />
          <StatisticRow
            name={t("whole.kappa-linear")}
            hint={t("whole.kappa.hint")}
            statistic={agreement.kappaLinear}
            range={[-1, 1]}
          />
          <StatisticRow
            name={t("whole.kappa-quadratic")}
            hint={t("whole.kappa.hint")}
            statistic={agreement.kappaQuadratic}
            range={[-1, 1]}
          />
          <StatisticRow
            name={t("whole.gwet")}
            hint={t("whole.gwet.hint")}
            statistic={agreement.gwetAC2}
            range={[-1, 1]}
          />
          <StatisticRow
            name={t("whole.alpha")}
            hint={t("whole.alpha.hint")}
            statistic={agreement.krippendorffAlpha}
            range={[-1, 1]}
          />
        </tbody>
      </table>
    </Panel>
  );
};

const Softness = ({ source }: Pick<Props, "source">) => {
  const t = useText();
  const intl = useIntl();
  const { softness, chance } = source.comparison;
  const facts: readonly (readonly [number, string])[] = [
    [softness.hedged, t("softness.hedged")],
    [softness.byEye, t("softness.by-eye")],
    [softness.silent, t("softness.silent")],
  ];
  return (
    <Panel title={t("softness.title")} hint={t("softness.hint", { decisive: softness.decisive })}>
      <ul className={styles.soft}>
        {facts.map(([count, text]) => (
          <li key={text}>
            <strong>{count}</strong> {text}
          </li>
        ))}
      </ul>
      <p className={styles.line}>
        {t("chance.line", {
          doubtful: chance.doubtful,
          readings: chance.readings,
          expected: intl.formatNumber(chance.expectedDoubtful, { maximumFractionDigits: 1 }),
        })}
      </p>
    </Panel>
  );
};

/** The figures over the whole report. */
export const WholeReport = ({ source, rows, onOpen }: Props) => {
  const t = useText();
  const sectionName = (id: string): string => source.index.sections.get(id)?.words.american ?? spelled(id);
  return (
    <div className={styles.whole}>
      <div className={styles.wide}>
        <Unseen rows={rows} onOpen={onOpen} />
      </div>
      <div className={styles.wide}>
        <Worklist source={source} rows={rows} onOpen={onOpen} />
      </div>
      <Softness source={source} />
      <Leaning source={source} />
      <div className={styles.wide}>
        <Panel title={t("coverage.title")} hint={t("coverage.hint")}>
          <Coverage coverage={source.comparison.coverage} sectionName={sectionName} />
        </Panel>
      </div>
      <div className={styles.wide}>
        <Agreement source={source} />
      </div>
    </div>
  );
};
