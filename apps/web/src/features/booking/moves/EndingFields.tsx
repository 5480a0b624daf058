import { NumberInput, Radio, Textarea } from "@mantine/core";
import type { SettlementBody } from "@evenhand/shared/http/booking";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { TickField } from "../../../ui/Fields";
import { moneyText } from "../../../ui/money";
import styles from "../Booking.module.css";
import type { Ending } from "./ending";
import type { MoveProps } from "./Moves";

export interface EndingProps extends MoveProps {
  readonly ending: Ending;
  readonly onChange: (ending: Ending) => void;
}

/** What an ending would settle, from where the reader stands. */
const useCost = ({ as }: MoveProps["appointment"]): ((settlement: SettlementBody) => string) => {
  const t = useText();
  const intl = useIntl();
  return (settlement) => {
    const money = (minor: number): string => moneyText(intl, { minor, currency: settlement.currency });
    return t(`moves.cancel.cost.${as}`, {
      pays: money(settlement.buyerPays),
      back: money(settlement.buyerRefunded),
      gets: money(settlement.inspectorGets),
      owes: money(as === "inspector" ? settlement.inspectorOwes : settlement.dealerOwes),
    });
  };
};

/** The causes that may be named at this moment, each with what it would settle. */
export const CauseChoice = ({
  appointment,
  label,
  ending,
  onChange,
}: EndingProps & { readonly label: string }) => {
  const t = useText();
  const cost = useCost(appointment);
  const { cancelling } = appointment;
  const choose = (value: string): void =>
    onChange({ ...ending, cause: cancelling.find((one) => one.cause === value)?.cause ?? "" });
  return (
    <Radio.Group label={label} value={ending.cause} onChange={choose}>
      <div className={styles.form} style={{ gap: "0.7rem", paddingTop: "0.6rem" }}>
        {cancelling.map(({ cause, settlement }) => (
          <Radio
            key={cause}
            size="md"
            value={cause}
            label={t(`cause.${cause}`)}
            description={cost(settlement)}
          />
        ))}
      </div>
    </Radio.Group>
  );
};

export const EndingNote = ({ ending, onChange }: Omit<EndingProps, "appointment">) => {
  const t = useText();
  return (
    <Textarea
      size="md"
      autosize
      maxLength={1000}
      label={t("moves.note")}
      value={ending.note}
      onChange={(event) => onChange({ ...ending, note: event.currentTarget.value })}
    />
  );
};

/** What an inspector has put into the visit so far. */
export const WorkDone = ({ appointment: { as, state }, ending, onChange }: EndingProps) => {
  const t = useText();
  if (as !== "inspector") return null;
  return (
    <>
      <TickField
        label={t("moves.cancel.set-out")}
        checked={ending.setOut}
        onChange={(setOut) => onChange({ ...ending, setOut })}
      />
      {state === "under-way" && (
        <NumberInput
          size="md"
          min={0}
          hideControls
          style={{ maxWidth: "16rem" }}
          label={t("moves.cancel.minutes")}
          value={ending.minutes}
          onChange={(minutes) => onChange({ ...ending, minutes })}
        />
      )}
    </>
  );
};
