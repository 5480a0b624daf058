import { Button, Checkbox, NumberInput, Radio, Textarea } from "@mantine/core";
import type { CancellationCause } from "@evenhand/shared/booking";
import type { SettlementBody } from "@evenhand/shared/http/booking";
import { useState, type FormEvent } from "react";
import { useIntl } from "react-intl";
import { call } from "../../../service/client";
import { useText } from "../../../strings/text";
import { moneyText } from "../../../ui/money";
import { Panel } from "../../../ui/Page";
import styles from "../Booking.module.css";
import { MoveProblem } from "../MoveProblem";
import type { MoveProps } from "./Moves";
import { useMove } from "../use-move";

/** What an ending would settle, from where the reader stands. */
const useCost = ({ appointment }: MoveProps) => {
  const t = useText();
  const intl = useIntl();
  return ({ settlement }: { readonly settlement: SettlementBody }): string => {
    const money = (minor: number): string => moneyText(intl, { minor, currency: settlement.currency });
    const { as } = appointment;
    return t(`moves.cancel.cost.${as}`, {
      pays: money(settlement.buyerPays),
      back: money(settlement.buyerRefunded),
      gets: money(settlement.inspectorGets),
      owes: money(as === "inspector" ? settlement.inspectorOwes : settlement.dealerOwes),
    });
  };
};

interface ChoiceProps extends MoveProps {
  readonly label: string;
  readonly cause: CancellationCause | "";
  readonly onChange: (cause: CancellationCause | "") => void;
}

const CauseChoice = ({ appointment, label, cause, onChange }: ChoiceProps) => {
  const t = useText();
  const cost = useCost({ appointment });
  return (
    <Radio.Group
      label={label}
      value={cause}
      onChange={(value) => {
        onChange(appointment.cancelling.find((one) => one.cause === value)?.cause ?? "");
      }}
    >
      <div className={styles.form} style={{ gap: "0.7rem", paddingTop: "0.6rem" }}>
        {appointment.cancelling.map((one) => (
          <Radio
            key={one.cause}
            size="md"
            value={one.cause}
            label={t(`cause.${one.cause}`)}
            description={cost(one)}
          />
        ))}
      </div>
    </Radio.Group>
  );
};

const Note = ({
  value,
  onChange,
}: {
  readonly value: string;
  readonly onChange: (value: string) => void;
}) => {
  const t = useText();
  return (
    <Textarea
      size="md"
      autosize
      maxLength={1000}
      label={t("moves.note")}
      value={value}
      onChange={(event) => onChange(event.currentTarget.value)}
    />
  );
};

const noteOf = (typed: string): { readonly note?: string } => {
  const note = typed.trim();
  return note === "" ? {} : { note };
};

/** An inspector declines with or without a word; a dealer names a cause about the car or the site. */
export const DeclineVisit = ({ appointment }: MoveProps) => {
  const t = useText();
  const [cause, setCause] = useState<CancellationCause | "">("");
  const [note, setNote] = useState("");
  const deals = appointment.as === "dealer";
  const decline = useMove(appointment, () =>
    call("appointments.decline", {
      params: { id: appointment.id },
      ifMatch: appointment.revision,
      body: { ...(cause === "" ? {} : { cause }), ...noteOf(note) },
    }),
  );
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    decline.mutate(undefined);
  };
  return (
    <Panel title={t("moves.decline.title")} hint={deals ? t("moves.decline.dealer") : undefined}>
      <form className={styles.form} onSubmit={submit}>
        {decline.error !== null && <MoveProblem error={decline.error} appointment={appointment} />}
        {deals && (
          <CauseChoice
            appointment={appointment}
            label={t("moves.decline.cause")}
            cause={cause}
            onChange={setCause}
          />
        )}
        <Note value={note} onChange={setNote} />
        <div>
          <Button
            type="submit"
            variant="default"
            disabled={deals && cause === ""}
            loading={decline.isPending}
          >
            {t("moves.decline.do")}
          </Button>
        </div>
      </form>
    </Panel>
  );
};

/** Cancelling, with what each cause would settle at this moment. */
export const CancelVisit = ({ appointment }: MoveProps) => {
  const t = useText();
  const [cause, setCause] = useState<CancellationCause | "">("");
  const [note, setNote] = useState("");
  const [setOut, setSetOut] = useState(false);
  const [minutes, setMinutes] = useState<number | string>(0);
  const inspects = appointment.as === "inspector";
  const cancel = useMove(appointment, (named: CancellationCause) =>
    call("appointments.cancel", {
      params: { id: appointment.id },
      ifMatch: appointment.revision,
      body: {
        cause: named,
        ...noteOf(note),
        ...(inspects ? { work: { setOut, minutesDone: typeof minutes === "number" ? minutes : 0 } } : {}),
      },
    }),
  );
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (cause !== "") cancel.mutate(cause);
  };
  return (
    <Panel title={t("moves.cancel.title")} hint={t("moves.cancel.what")}>
      <form className={styles.form} onSubmit={submit}>
        {cancel.error !== null && <MoveProblem error={cancel.error} appointment={appointment} />}
        <CauseChoice
          appointment={appointment}
          label={t("moves.cancel.cause")}
          cause={cause}
          onChange={setCause}
        />
        {inspects && (
          <Checkbox
            size="md"
            label={t("moves.cancel.set-out")}
            checked={setOut}
            onChange={(event) => setSetOut(event.currentTarget.checked)}
          />
        )}
        {inspects && appointment.state === "under-way" && (
          <NumberInput
            size="md"
            min={0}
            hideControls
            style={{ maxWidth: "16rem" }}
            label={t("moves.cancel.minutes")}
            value={minutes}
            onChange={setMinutes}
          />
        )}
        <Note value={note} onChange={setNote} />
        <p className={styles.hint}>{t("moves.cancel.sure")}</p>
        <div>
          <Button type="submit" variant="default" disabled={cause === ""} loading={cancel.isPending}>
            {t("moves.cancel.do")}
          </Button>
        </div>
      </form>
    </Panel>
  );
};
