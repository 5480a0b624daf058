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

/** The chance of such a leaning by luck. */
const SignTest = ({ p }: { readonly p: number | null }) => {
  const t = useText();
  const intl = useIntl();
  if (p === null) return <p className={styles.line}>{t("whole.sign.none")}</p>;
  const said = intl.formatNumber(p, { maximumSignificantDigits: 2 });
  return <p className={styles.line}>{t(p < 0.001 ? "whole.sign.small" : "whole.sign", { p: said })}</p>;
};

const Leaning = ({ source }: Pick<Props, "source">) => {
  const t = useText();
  const { meanStep, shift, signTestP } = source.comparison.bias;
  return (
    <Panel title={t("whole.bias")} hint={t("whole.bias.hint")}>
      <table className={styles.statistics}>
        <tbody>
          <StatisticRow
            name={t("whole.steps")}
            hint={t("whole.steps.hint")}
            statistic={meanStep}
            range={[-2, 2]}
          />
          <StatisticRow
            name={t("whole.shift")}
            hint={t("whole.shift.hint")}
            statistic={shift}
            range={[-2, 2]}
          />
        </tbody>
      </table>
      <SignTest p={signTestP} />
    </Panel>
  );
};

/** Others than the one that is shown, for who asks for them; each from one to minus one. */
const otherCoefficients = [
  { of: "kappaLinear", name: "whole.kappa-linear", hint: "whole.kappa.hint" },
  { of: "kappaQuadratic", name: "whole.kappa-quadratic", hint: "whole.kappa.hint" },
  { of: "krippendorffAlpha", name: "whole.alpha", hint: "whole.alpha.hint" },
] as const;

const OtherCoefficients = ({ source }: Pick<Props, "source">) => {
  const t = useText();
  const { agreement } = source.comparison;
  return (
    <details>
      <summary>{t("whole.other-coefficients")}</summary>
      <p className={styles.line}>{t("whole.other-coefficients.hint")}</p>
      <table className={styles.statistics}>
        <tbody>
          {otherCoefficients.map(({ of, name, hint }) => (
            <StatisticRow key={of} name={t(name)} hint={t(hint)} statistic={agreement[of]} range={[-1, 1]} />
          ))}
        </tbody>
      </table>
    </details>
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
            name={t("whole.gwet")}
            hint={t("whole.gwet.hint")}
            statistic={agreement.gwetAC2}
            range={[-1, 1]}
          />
        </tbody>
      </table>
      <OtherCoefficients source={source} />
    </Panel>
  );
};

/** Said only where something hangs on it. */
const Scatter = ({ source }: Pick<Props, "source">) => {
  const t = useText();
  const { scatter } = source.comparison;
  if (scatter === undefined || scatter.onlyAsDeclared === 0) return null;
  const { asDeclared, onlyAsDeclared: count } = scatter;
  const more = asDeclared !== null && asDeclared < 0.5 ? "yes" : "no";
  return <p className={styles.line}>{t("scatter.line", { count, more })}</p>;
};

/** What repeats of each side, and readings both wrote alike, come to; figures alone, since page one says what they mean. */
const Likeness = ({ source }: Pick<Props, "source">) => {
  const t = useText();
  const intl = useIntl();
  const { repeats, likeReadings } = source.comparison;
  const one = (value: number): string => intl.formatNumber(value, { maximumFractionDigits: 1 });
  return (
    <>
      {repeats !== undefined &&
        (["a", "b"] as const).map((side) => {
          const { places, degreesOfFreedom: degrees, ratio } = repeats[side];
          if (ratio === undefined) return null;
          return (
            <p key={side} className={styles.line}>
              {t("repeats.line", { side, places, degrees, ratio: one(ratio) })}
            </p>
          );
        })}
      {likeReadings !== undefined && (
        <p className={styles.line}>
          {t("alike.line", {
            compared: likeReadings.compared,
            same: likeReadings.same,
            expected: one(likeReadings.expected),
          })}
        </p>
      )}
    </>
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
      <Scatter source={source} />
      <Likeness source={source} />
    </Panel>
  );
};

/** Statistics stand folded: words come first. */
const Arithmetic = ({ source }: Pick<Props, "source">) => {
  const t = useText();
  return (
    <details className={styles.wide}>
      <summary>{t("whole.arithmetic")}</summary>
      <div className={styles.whole}>
        <Leaning source={source} />
        <div className={styles.wide}>
          <Agreement source={source} />
        </div>
      </div>
    </details>
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
      <div className={styles.wide}>
        <Panel title={t("coverage.title")} hint={t("coverage.hint")}>
          <Coverage coverage={source.comparison.coverage} sectionName={sectionName} />
        </Panel>
      </div>
      <Arithmetic source={source} />
    </div>
  );
};
