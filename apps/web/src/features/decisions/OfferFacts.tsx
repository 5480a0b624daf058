import type { Decision } from "@evenhand/shared/http/summaries";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { moneyText } from "../../ui/money";
import { Facts } from "../../ui/Page";
import { dayAndHour } from "../../entities/time/day-and-hour";

const inFull = { ...dayAndHour, year: "numeric", month: "long" } as const;

/** A price, conditions, or both, and until when they stand. */
export const OfferFacts = ({
  price,
  conditions,
  until,
}: Pick<Decision, "price" | "conditions" | "until">) => {
  const t = useText();
  const intl = useIntl();
  return (
    <Facts
      rows={[
        [t("decide.price"), price === null ? t("counter.no-price") : moneyText(intl, price)],
        [t("decide.conditions"), conditions ?? t("counter.no-conditions")],
        [t("offer.until"), until === null ? t("offer.until.open") : intl.formatDate(until, inFull)],
      ]}
    />
  );
};
