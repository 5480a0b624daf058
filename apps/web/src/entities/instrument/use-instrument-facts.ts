import type { Instrument } from "@evenhand/shared/report";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { quantity } from "../sheet/answer-text";

/** What an instrument's line says beside its name: step, accuracy, calibration. Empty where nothing is known. */
export const useInstrumentFacts = (): ((instrument: Instrument) => string) => {
  const t = useText();
  const intl = useIntl();
  return ({ resolution, accuracy, calibrated }) =>
    [
      resolution && t("instrument.resolution", { step: quantity(resolution.value, resolution.unit) }),
      accuracy?.absolute &&
        t("instrument.accuracy", { within: quantity(accuracy.absolute.value, accuracy.absolute.unit) }),
      accuracy !== undefined &&
        accuracy.share > 0 &&
        t("instrument.share", { share: intl.formatNumber(accuracy.share * 100) }),
      calibrated !== undefined && t("instrument.calibrated", { date: calibrated }),
    ]
      .filter((part) => typeof part === "string")
      .join(", ");
};
