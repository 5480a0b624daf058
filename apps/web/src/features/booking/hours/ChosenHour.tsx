import { useText } from "../../../strings/text";
import { Panel } from "../../../ui/Page";
import styles from "../Booking.module.css";
import { LostHour } from "./LostHour";
import { OfferPanel } from "./OfferPanel";
import type { Hours } from "./use-hours";

/** Why the hour was not got, if it was not. */
const Lost = ({ hours: { found, open, take } }: { readonly hours: Hours }) => {
  if (take.error === null) return null;
  return (
    <LostHour
      error={take.error}
      zone={found?.zone ?? "UTC"}
      currency={found?.offers[0]?.cost.total.currency}
      onTake={(offer) => {
        open(offer);
        take.mutate(offer);
      }}
    />
  );
};

/** The hour that is open; where none is, how to open one. */
export const ChosenHour = ({ hours }: { readonly hours: Hours }) => {
  const t = useText();
  const { found, search } = hours;
  const chosen = found?.offers.find(({ id }) => id === search.offer);
  if (found === undefined || chosen === undefined) {
    return (
      <Panel title={t("offer.title")}>
        <Lost hours={hours} />
        <p className={styles.hint}>{t("offer.none")}</p>
      </Panel>
    );
  }
  return (
    <OfferPanel
      key={chosen.start}
      offer={chosen}
      found={found}
      hours={hours}
      refusal={<Lost hours={hours} />}
    />
  );
};
