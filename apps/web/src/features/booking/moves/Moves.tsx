import type { AppointmentSeen } from "@evenhand/shared/http/booking";
import type { AppointmentMove } from "@evenhand/shared/booking";
import type { ReactElement } from "react";
import { useText } from "../../../strings/text";
import { Panel } from "../../../ui/Page";
import { AcceptVisit } from "./AcceptVisit";
import { CancelVisit, DeclineVisit } from "./EndVisit";
import { ConfirmAccess } from "./ConfirmAccess";
import { RequestHour } from "./RequestHour";
import { RoadForm } from "./RoadForm";
import { CloseVisit, MoveHour, RecordMissed, StartVisit } from "./SimpleMoves";

export interface MoveProps {
  readonly appointment: AppointmentSeen;
}

/** In the order in which they are shown; what ends the visit stands last. */
const forms: readonly (readonly [AppointmentMove, (props: MoveProps) => ReactElement | null])[] = [
  ["request", RequestHour],
  ["accept", AcceptVisit],
  ["confirm", ConfirmAccess],
  ["start", StartVisit],
  ["take-to-road", RoadForm],
  ["report", CloseVisit],
  ["reschedule", MoveHour],
  ["miss", RecordMissed],
  ["decline", DeclineVisit],
  ["cancel", CancelVisit],
];

const cautioned: readonly AppointmentMove[] = ["request", "accept", "confirm", "start", "take-to-road"];

/** Does one of the forms bring the cautions already? */
export const bringsCaution = ({ appointment: { moves } }: MoveProps): boolean =>
  cautioned.some((move) => moves.includes(move));

/** What this person may do now, as the service says it. */
export const Moves = ({ appointment }: MoveProps) => {
  const t = useText();
  const { moves } = appointment;
  // Where an hour can still be declined, that is how it ends: for the same causes, at no cost.
  const possible = forms.filter(
    ([move]) => moves.includes(move) && !(move === "cancel" && moves.includes("decline")),
  );
  if (possible.length === 0) {
    return (
      <Panel title={t("moves.title")}>
        <p>{t("moves.none")}</p>
      </Panel>
    );
  }
  return possible.map(([move, Form]) => <Form key={move} appointment={appointment} />);
};
