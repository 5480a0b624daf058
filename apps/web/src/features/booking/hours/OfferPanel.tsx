import { Button } from "@mantine/core";
import type { OfferBody } from "@evenhand/shared/booking";
import { useEffect, useRef, type ReactNode } from "react";
import { useText } from "../../../strings/text";
import { Facts, Panel } from "../../../ui/Page";
import styles from "../Booking.module.css";
import { CostTable } from "../CostTable";
import { Independence } from "../Independence";
import { VisitCaution } from "../VisitCaution";
import { TermsTable } from "../TermsTable";
import { SameStart } from "./SameStart";
import type { Found, Hours } from "./use-hours";
import { useOfferFacts } from "./use-offer-facts";

interface Props {
  readonly offer: OfferBody;
  readonly found: Found;
  readonly hours: Hours;
  readonly refusal: ReactNode;
}

/** Takes the focus when another hour is opened, so that what is read next is about it. */
const FocusedTitle = () => {
  const t = useText();
  const heading = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    heading.current?.scrollIntoView({ block: "nearest" });
  }, []);
  return (
    <span ref={heading} tabIndex={-1} style={{ outline: "none" }}>
      {t("offer.title")}
    </span>
  );
};

const Part = ({ title, children }: { readonly title: string; readonly children: ReactNode }) => (
  <div className={styles.part}>
    <h3>{title}</h3>
    {children}
  </div>
);

const OfferIndependence = ({ offer, found }: Pick<Props, "offer" | "found">) => {
  const t = useText();
  const person = found.inspectors.get(offer.inspector);
  if (person === undefined) return null;
  return (
    <Part title={t("beholden.title")}>
      <Independence dealer={found.dealer.name} share={person.shareOfWork} interests={person.past} />
      <p className={styles.hint}>
        {t("beholden.again")} {t("beholden.dealer")}
      </p>
    </Part>
  );
};

const OfferTerms = ({ hours: { terms } }: Pick<Props, "hours">) => {
  const t = useText();
  if (terms === undefined) return null;
  return (
    <Part title={t("terms.title")}>
      <TermsTable terms={terms} />
      <p className={styles.hint}>{t("terms.held")}</p>
    </Part>
  );
};

/** Held for the buyer, or the visit moved to it. */
const TakeHour = ({ offer, hours: { search, take } }: Pick<Props, "offer" | "hours">) => {
  const t = useText();
  const deed = search.moving === undefined ? "hold" : "move";
  return (
    <div className={styles.part}>
      <div>
        <Button size="md" loading={take.isPending} onClick={() => take.mutate(offer)}>
          {t(`offer.${deed}`)}
        </Button>
      </div>
      <p className={styles.hint}>{t(`offer.${deed}.what`)}</p>
    </div>
  );
};

/** One hour with everything that is to be known before it is taken: cost, independence, terms, cautions. */
export const OfferPanel = ({ offer, found, hours, refusal }: Props) => {
  const t = useText();
  const facts = useOfferFacts(offer, found);
  return (
    <Panel title={<FocusedTitle />}>
      {refusal}
      <SameStart offer={offer} found={found} onOpen={hours.open} />
      <Facts rows={facts} />
      <Part title={t("cost.title")}>
        <CostTable cost={offer.cost} />
      </Part>
      <OfferIndependence offer={offer} found={found} />
      <OfferTerms hours={hours} />
      <VisitCaution plan={found.plan} />
      <TakeHour offer={offer} hours={hours} />
    </Panel>
  );
};
