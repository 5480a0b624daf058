import { Button } from "@mantine/core";
import type { OfferBody } from "@evenhand/shared/booking";
import { Offers, RefusedHourBody } from "@evenhand/shared/http/booking";
import { problemCodeOf } from "@evenhand/shared/http/problem-codes";
import { useIntl } from "react-intl";
import { z } from "zod";
import { Refusal } from "../../../service/refusal";
import { useText } from "../../../strings/text";
import { moneyText } from "../../../ui/money";
import { Notice } from "../../../ui/Notice";
import { ProblemNotice } from "../../../ui/ProblemNotice";
import { useTimes } from "../../../entities/time/use-times";
import { useReason } from "./use-reason";
import { ReasonList } from "./ReasonList";
import styles from "../Booking.module.css";

/** A refused hour carries why, and what is free at this moment. */
const WithOffers = z.looseObject({
  reasons: z.array(RefusedHourBody).catch([]),
  offers: Offers.nullable().catch(null),
});

interface Props {
  readonly error: unknown;
  readonly zone: string;
  readonly currency: string | undefined;
  readonly onTake: (offer: OfferBody) => void;
}

interface FreshProps extends Pick<Props, "zone" | "onTake"> {
  readonly offers: readonly OfferBody[];
}

/** Hours that are free now, to be taken with one press. */
const FreshOffers = ({ offers, zone, onTake }: FreshProps) => {
  const t = useText();
  const intl = useIntl();
  const times = useTimes();
  return (
    <>
      <p>{t(offers.length > 0 ? "lost.fresh" : "lost.none")}</p>
      <div className={styles.buttons}>
        {offers.slice(0, 6).map((offer) => (
          <Button key={offer.id} variant="default" size="compact-md" onClick={() => onTake(offer)}>
            {t("lost.take", {
              when: times.brief(offer.start, zone),
              total: moneyText(intl, offer.cost.total),
            })}
          </Button>
        ))}
      </div>
    </>
  );
};

/** The hour is gone: what was in the way, and hours that are free now. */
export const LostHour = ({ error, zone, currency, onTake }: Props) => {
  const t = useText();
  const say = useReason(zone, currency);
  const lost = error instanceof Refusal && problemCodeOf(error.problem.type) === "hour-taken";
  if (!lost) return <ProblemNotice error={error} />;
  const { reasons, offers: fresh } = WithOffers.parse(error.problem);
  return (
    <Notice kind="refusal" title={t("lost.title")}>
      <p>{t("lost.what")}</p>
      {reasons.length > 0 && <ReasonList reasons={reasons} say={say} />}
      <FreshOffers offers={fresh?.offers ?? []} zone={zone} onTake={onTake} />
    </Notice>
  );
};
