import type { Figures, LimitFigures, ReadingFigures } from "@evenhand/shared/comparison";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { withUnit } from "../sheet/answer-text";
import { CodePicture } from "./CodePicture";
import { GradePicture } from "./GradePicture";
import { ReadingScale } from "./ReadingScale";
import { digitsFor } from "./scale";
import styles from "./EntryFigures.module.css";

const ReadingNumbers = ({ figures }: { readonly figures: ReadingFigures }) => {
  const t = useText();
  const intl = useIntl();
  const digits = digitsFor(figures.expandedUncertainty);
  const exact = (value: number): string =>
    withUnit(
      intl.formatNumber(value, {
        minimumFractionDigits: digits,
        maximumFractionDigits: digits,
        signDisplay: "negative",
      }),
      figures.unit,
    );
  const short = (value: number): string => intl.formatNumber(value, { maximumFractionDigits: 2 });
  const numbers: (readonly [string, string])[] = [
    [
      t("figures.difference"),
      t("figures.difference.value", {
        difference: exact(figures.difference),
        u: exact(figures.expandedUncertainty),
      }),
    ],
    [
      t("figures.delta"),
      withUnit(intl.formatNumber(figures.delta, { maximumSignificantDigits: 4 }), figures.unit),
    ],
  ];
  if (figures.zetaScore !== null) numbers.push([t("figures.zeta"), short(figures.zetaScore)]);
  if (figures.eNumber !== null) numbers.push([t("figures.en"), short(figures.eNumber)]);
  numbers.push([t("figures.k"), short(figures.coverageFactor)]);
  const replaced = figures.a.scatterReplaced || figures.b.scatterReplaced;
  return (
    <>
      <dl className={styles.numbers}>
        {numbers.map(([term, value]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {replaced && <p className={styles.aside}>{t("figures.scatter-replaced")}</p>}
    </>
  );
};

export const EntryFigures = ({
  figures,
  limits,
}: {
  readonly figures: Figures;
  readonly limits: readonly LimitFigures[];
}) => {
  const t = useText();
  const intl = useIntl();
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
    case "color": {
      const one = (value: number): string =>
        intl.formatNumber(value, { maximumFractionDigits: 1, minimumFractionDigits: 1 });
      return (
        <p>
          {t("figures.color", {
            deltaE: one(figures.deltaE),
            u: one(figures.expandedUncertainty),
            delta: one(figures.delta),
          })}
        </p>
      );
    }
  }
};
