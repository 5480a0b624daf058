import type { Decision } from "@evenhand/shared/http/summaries";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { moneyText } from "../../ui/money";
import { Facts } from "../../ui/Page";

/** With the zone: the two who read it may be an ocean apart. */
const DAY_AND_HOUR = {
  year: "numeric",
  month: "long",
  day: "numeric",
  hour: "numeric",
  minute: "2-digit",
  timeZoneName: "short",
} as const;

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
        [t("offer.until"), until === null ? t("offer.until.open") : intl.formatDate(until, DAY_AND_HOUR)],
      ]}
    />
  );
};
