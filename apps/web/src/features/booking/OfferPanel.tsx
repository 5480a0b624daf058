import { Button, Radio } from "@mantine/core";
import type { OfferBody } from "@evenhand/shared/booking";
import type { BookingTerms, Offers } from "@evenhand/shared/http/booking";
import { useEffect, useRef, type ReactNode } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { moneyText } from "../../ui/money";
import { Facts, Panel } from "../../ui/Page";
import { When } from "../../entities/time/When";
import { useDuration } from "../../entities/time/use-duration";
import { useTimes } from "../../entities/time/use-times";
import styles from "./Booking.module.css";
import { CostTable } from "./CostTable";
import { Independence } from "./Independence";
import { VisitCaution } from "./PlanView";
import { useMiles } from "./reasons";
import { TermsTable } from "./TermsTable";

interface Props {
  readonly offer: OfferBody;
  /** Everybody who offers the same start. */
  readonly same: readonly OfferBody[];
  readonly offers: Offers;
  readonly inspectors: Offers["inspectors"];
  readonly terms: BookingTerms | undefined;
  readonly moving: boolean;
  readonly pending: boolean;
  readonly refusal: ReactNode;
  readonly onOpen: (offer: OfferBody) => void;
  readonly onTake: (offer: OfferBody) => void;
}

const useRows = ({ offer, offers, inspectors }: Pick<Props, "offer" | "offers" | "inspectors">) => {
  const t = useText();
  const intl = useIntl();
  const times = useTimes();
  const duration = useDuration();
  const miles = useMiles();
  const person = inspectors.find(({ id }) => id === offer.inspector);
  const skills = person?.skills.map((skill) => t(`skill.${skill}`)) ?? [];
  const rows: (readonly [ReactNode, ReactNode])[] = [
    [t("offer.when"), <When key="when" start={offer.start} end={offer.end} zone={offers.zone} />],
    [t("offer.where"), `${offers.site.name}, ${offers.site.address}`],
    [t("offer.who"), t("offer.who.line", { name: person?.name ?? "", firm: person?.firm.name ?? "" })],
    [
      t("offer.skills"),
      skills.length === 0 ? t("offer.skills.none") : intl.formatList(skills, { type: "unit" }),
    ],
    [
      t("offer.way.term"),
      t("offer.way", {
        out: duration(offer.travel.outMinutes),
        back: duration(offer.travel.backMinutes),
        distance: miles(offer.travel.outMeters),
      }),
    ],
    [
      t("offer.lift"),
      offer.bays.length === 0
        ? t("offer.lift.none")
        : offer.bays.map(({ start, end }) => times.range(start, end, offers.zone)).join("; "),
    ],
  ];
  return { rows, person };
};

/** One hour with everything that is to be known before it is taken: cost, independence, terms, cautions. */
export const OfferPanel = (props: Props) => {
  const { offer, same, offers, terms, moving, pending, refusal, onOpen, onTake } = props;
  const t = useText();
  const intl = useIntl();
  const heading = useRef<HTMLSpanElement>(null);
  const { rows, person } = useRows(props);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    heading.current?.scrollIntoView({ block: "nearest" });
  }, []);
  return (
    <Panel
      title={
        <span ref={heading} tabIndex={-1} style={{ outline: "none" }}>
          {t("offer.title")}
        </span>
      }
    >
      {refusal}
      {same.length > 1 && (
        <Radio.Group
          label={t("offer.inspectors")}
          value={offer.id}
          onChange={(id) => {
            const chosen = same.find((one) => one.id === id);
            if (chosen) onOpen(chosen);
          }}
        >
          <div className={styles.form} style={{ gap: "0.6rem", paddingTop: "0.6rem" }}>
            {same.map((one) => {
              const who = props.inspectors.find(({ id }) => id === one.inspector);
              return (
                <Radio
                  key={one.id}
                  size="md"
                  value={one.id}
                  label={t("offer.who.line", { name: who?.name ?? "", firm: who?.firm.name ?? "" })}
                  description={moneyText(intl, one.cost.total)}
                />
              );
            })}
          </div>
        </Radio.Group>
      )}
      <Facts rows={rows} />
      <div className={styles.part}>
        <h3>{t("cost.title")}</h3>
        <CostTable cost={offer.cost} />
      </div>
      {person !== undefined && (
        <div className={styles.part}>
          <h3>{t("beholden.title")}</h3>
          <Independence dealer={offers.dealer.name} share={person.shareOfWork} interests={person.past} />
          <p className={styles.hint}>
            {t("beholden.again")} {t("beholden.dealer")}
          </p>
        </div>
      )}
      {terms !== undefined && (
        <div className={styles.part}>
          <h3>{t("terms.title")}</h3>
          <TermsTable terms={terms} />
          <p className={styles.hint}>{t("terms.held")}</p>
        </div>
      )}
      <VisitCaution plan={offers.plan} />
      <div className={styles.part}>
        <div>
          <Button size="md" loading={pending} onClick={() => onTake(offer)}>
            {t(moving ? "offer.move" : "offer.hold")}
          </Button>
        </div>
        <p className={styles.hint}>{t(moving ? "offer.move.what" : "offer.hold.what")}</p>
      </div>
    </Panel>
  );
};
