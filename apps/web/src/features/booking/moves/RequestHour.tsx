import { Button, Checkbox } from "@mantine/core";
import { useState, type FormEvent } from "react";
import { useIntl } from "react-intl";
import { call } from "../../../service/client";
import { useText } from "../../../strings/text";
import { moneyText } from "../../../ui/money";
import { Panel } from "../../../ui/Page";
import styles from "../Booking.module.css";
import { VisitCaution } from "../PlanView";
import { MoveProblem } from "../MoveProblem";
import type { MoveProps } from "./Moves";
import { useMove } from "../use-move";

/** The buyer asks for the hour that is held, under terms that were read. */
export const RequestHour = ({ appointment }: MoveProps) => {
  const t = useText();
  const intl = useIntl();
  const [read, setRead] = useState(false);
  const [pays, setPays] = useState(false);
  const { terms, cost } = appointment;
  const request = useMove(appointment, () =>
    call("appointments.request", {
      params: { id: appointment.id },
      ifMatch: appointment.revision,
      body: { terms: terms.version },
    }),
  );
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    request.mutate(undefined);
  };
  return (
    <Panel title={t("moves.request.title")} hint={t("moves.request.what")}>
      <form className={styles.form} onSubmit={submit}>
        {request.error !== null && <MoveProblem error={request.error} appointment={appointment} />}
        <VisitCaution plan={appointment.plan} />
        <Checkbox
          size="md"
          label={t("moves.request.terms", {
            version: terms.version,
            total: cost === null ? "" : moneyText(intl, cost.total),
          })}
          checked={read}
          onChange={(event) => setRead(event.currentTarget.checked)}
        />
        <Checkbox
          size="md"
          label={t("moves.request.pays")}
          checked={pays}
          onChange={(event) => setPays(event.currentTarget.checked)}
        />
        <div>
          <Button type="submit" size="md" disabled={!read || !pays} loading={request.isPending}>
            {t("moves.request.do")}
          </Button>
        </div>
      </form>
    </Panel>
  );
};
