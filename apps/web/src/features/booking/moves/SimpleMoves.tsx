import { Button } from "@mantine/core";
import { call } from "../../../service/client";
import { useText } from "../../../strings/text";
import { LinkButton } from "../../../ui/LinkButton";
import { Panel } from "../../../ui/Page";
import styles from "../Booking.module.css";
import { VisitCaution } from "../VisitCaution";
import { MoveProblem } from "../MoveProblem";
import type { MoveProps } from "./Moves";
import { useMove } from "../use-move";

/** To the hours of the same inspector. */
export const MoveHour = ({ appointment }: MoveProps) => {
  const t = useText();
  const [car, ...others] = appointment.cars;
  if (car === undefined) return null;
  return (
    <Panel title={t("moves.reschedule.title")} hint={t("moves.reschedule.what")}>
      <div>
        <LinkButton
          variant="default"
          to="/cars/$vehicle/hours"
          params={{ vehicle: car.id }}
          search={{
            moving: appointment.id,
            with: others.length === 0 ? undefined : others.map(({ id }) => id).join(","),
          }}
        >
          {t("moves.reschedule.do")}
        </LinkButton>
      </div>
    </Panel>
  );
};

const ToSheets = ({ appointment }: MoveProps) => {
  const t = useText();
  return appointment.visits.map(({ order }) =>
    order === null ? null : (
      <LinkButton key={order} variant="default" to="/orders/$order" params={{ order }}>
        {t("moves.sheet")}
      </LinkButton>
    ),
  );
};

export const StartVisit = ({ appointment }: MoveProps) => {
  const t = useText();
  const start = useMove(appointment, () =>
    call("appointments.start", {
      params: { id: appointment.id },
      ifMatch: appointment.revision,
      body: {},
    }),
  );
  return (
    <Panel title={t("moves.start.title")}>
      {start.error !== null && <MoveProblem error={start.error} appointment={appointment} />}
      <VisitCaution plan={appointment.plan} />
      <div>
        <Button size="md" loading={start.isPending} onClick={() => start.mutate(undefined)}>
          {t("moves.start.do")}
        </Button>
      </div>
    </Panel>
  );
};

export const CloseVisit = ({ appointment }: MoveProps) => {
  const t = useText();
  const report = useMove(appointment, () =>
    call("appointments.report", {
      params: { id: appointment.id },
      ifMatch: appointment.revision,
      body: {},
    }),
  );
  return (
    <Panel title={t("moves.report.title")} hint={t("moves.report.what")}>
      {report.error !== null && <MoveProblem error={report.error} appointment={appointment} />}
      <div className={styles.buttons}>
        <ToSheets appointment={appointment} />
        <Button loading={report.isPending} onClick={() => report.mutate(undefined)}>
          {t("moves.report.do")}
        </Button>
      </div>
    </Panel>
  );
};

export const RecordMissed = ({ appointment }: MoveProps) => {
  const t = useText();
  const miss = useMove(appointment, () =>
    call("appointments.miss", {
      params: { id: appointment.id },
      ifMatch: appointment.revision,
      body: {},
    }),
  );
  return (
    <Panel title={t("moves.miss.title")} hint={t("moves.miss.what")}>
      {miss.error !== null && <MoveProblem error={miss.error} appointment={appointment} />}
      <div>
        <Button variant="default" loading={miss.isPending} onClick={() => miss.mutate(undefined)}>
          {t("moves.miss.do")}
        </Button>
      </div>
    </Panel>
  );
};
