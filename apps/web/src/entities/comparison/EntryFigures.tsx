import { takenDifference } from "@evenhand/comparison/use-allowed";
import type { Figures, LimitFigures, ReadingFigures } from "@evenhand/shared/comparison";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { withUnit } from "../sheet/answer-text";
import { CodePicture } from "./CodePicture";
import { GradePicture } from "./GradePicture";
import { ReadingScale } from "./ReadingScale";
import { digitsFor } from "./scale";
import styles from "./EntryFigures.module.css";

/** What a reading's figures are, each with its name. */
const useNumbers = (figures: ReadingFigures): readonly (readonly [string, string])[] => {
  const t = useText();
  const intl = useIntl();
  const { difference, expandedUncertainty: u, delta, unit, zetaScore, eNumber, coverageFactor } = figures;
  const { a, b, correction } = figures;
  const digits = digitsFor(u);
  const style = { minimumFractionDigits: digits, maximumFractionDigits: digits } as const;
  const exact = (value: number): string =>
    withUnit(intl.formatNumber(value, { ...style, signDisplay: "negative" }), unit);
  const short = (value: number): string => intl.formatNumber(value, { maximumFractionDigits: 2 });
  const withU = (value: number): string =>
    t("figures.difference.value", { difference: exact(value), u: exact(u) });
  const readAs = (read: number, taken: number): string =>
    t("figures.taken.value", { read: exact(read), taken: exact(taken) });
  const matters = withUnit(intl.formatNumber(delta, { maximumSignificantDigits: 4 }), unit);
  return [
    ...(correction === undefined
      ? [[t("figures.difference"), withU(difference)] as const]
      : [
          [t("figures.difference.read"), exact(difference)] as const,
          [t("figures.difference.taken"), withU(takenDifference(figures))] as const,
        ]),
    ...(a.taken === undefined ? [] : [[t("figures.stated.taken"), readAs(a.mean, a.taken)] as const]),
    ...(b.taken === undefined ? [] : [[t("figures.found.taken"), readAs(b.mean, b.taken)] as const]),
    [t("figures.delta"), matters],
    ...(zetaScore === null ? [] : [[t("figures.zeta"), short(zetaScore)] as const]),
    ...(eNumber === null ? [] : [[t("figures.en"), short(eNumber)] as const]),
    [t("figures.k"), short(coverageFactor)],
  ];
};

const ReadingNumbers = ({ figures }: { readonly figures: ReadingFigures }) => {
  const t = useText();
  const numbers = useNumbers(figures);
  const replaced = figures.a.scatterReplaced || figures.b.scatterReplaced;
  return (
    <details>
      <summary>{t("figures.arithmetic")}</summary>
      <dl className={styles.numbers}>
        {numbers.map(([term, value]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {replaced && <p className={styles.aside}>{t("figures.scatter-replaced")}</p>}
    </details>
  );
};

const ColorFigures = ({ figures }: { readonly figures: Extract<Figures, { of: "color" }> }) => {
  const t = useText();
  const intl = useIntl();
  const one = (value: number): string =>
    intl.formatNumber(value, { maximumFractionDigits: 1, minimumFractionDigits: 1 });
  const { deltaE, expandedUncertainty, delta } = figures;
  return <p>{t("figures.color", { deltaE: one(deltaE), u: one(expandedUncertainty), delta: one(delta) })}</p>;
};

interface Props {
  readonly figures: Figures;
  readonly limits: readonly LimitFigures[];
}

/** What was computed of a place, as its kind of answer shows it. */
export const EntryFigures = ({ figures, limits }: Props) => {
  switch (figures.of) {
    case "reading":
      return (
        <>
          <ReadingScale figures={figures} limits={limits} />
          <ReadingNumbers figures={figures} />
        </>
      );
    case "grade":
      return <GradePicture figures={figures} />;
    case "code":
      return <CodePicture figures={figures} />;
    case "color":
      return <ColorFigures figures={figures} />;
  }
};
