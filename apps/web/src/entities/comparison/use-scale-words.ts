import { takenMean } from "@evenhand/comparison/use-allowed";
import type { LimitFigures, ReadingFigures } from "@evenhand/shared/comparison";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { withUnit } from "../sheet/answer-text";
import type { Band, ReadingScaleView } from "./reading-scale";
import { digitsFor } from "./scale";

/** The figures of a scale in words, each in the reader's own form of numbers. */
export const useScaleWords = (figures: ReadingFigures, view: ReadingScaleView) => {
  const t = useText();
  const intl = useIntl();
  const plain = (value: number): string => intl.formatNumber(value, { maximumSignificantDigits: 6 });
  const exact = (value: number, u: number): string => {
    const digits = digitsFor(u);
    return intl.formatNumber(value, { minimumFractionDigits: digits, maximumFractionDigits: digits });
  };
  const side = ({ high }: Band, mean: number): string =>
    t("scale.side", {
      mean: exact(mean, high - mean),
      u: withUnit(exact(high - mean, high - mean), figures.unit),
    });
  return {
    plain,
    stated: side(view.stated, takenMean(figures.a)),
    found: side(view.found, takenMean(figures.b)),
    delta: withUnit(plain(figures.delta), figures.unit),
    limit: (one: LimitFigures): string =>
      t(`scale.limit.${one.side}`, { value: withUnit(plain(one.value), one.unit) }),
  };
};

export type ScaleWords = ReturnType<typeof useScaleWords>;
