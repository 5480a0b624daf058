import { Radio } from "@mantine/core";
import type { OfferBody } from "@evenhand/shared/booking";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { moneyText } from "../../../ui/money";
import styles from "../Booking.module.css";
import type { Found } from "./use-hours";
import { useInspectorLine } from "../use-inspector-line";

interface Props {
  readonly offer: OfferBody;
  readonly found: Found;
  readonly onOpen: (offer: OfferBody) => void;
}

/** Everybody who offers the same start, where it is not one alone. */
export const SameStart = ({ offer, found, onOpen }: Props) => {
  const t = useText();
  const intl = useIntl();
  const inspectorLine = useInspectorLine();
  const same = found.offers.filter(({ start }) => start === offer.start);
  if (same.length < 2) return null;
  const open = (id: string): void => {
    const chosen = same.find((one) => one.id === id);
    if (chosen) onOpen(chosen);
  };
  return (
    <Radio.Group label={t("offer.inspectors")} value={offer.id} onChange={open}>
      <div className={styles.form} style={{ gap: "0.6rem", paddingTop: "0.6rem" }}>
        {same.map((one) => (
          <Radio
            key={one.id}
            size="md"
            value={one.id}
            label={inspectorLine(found.inspectors.get(one.inspector))}
            description={moneyText(intl, one.cost.total)}
          />
        ))}
      </div>
    </Radio.Group>
  );
};
