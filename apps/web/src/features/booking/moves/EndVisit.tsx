import type { CancellationCause } from "@evenhand/shared/booking";
import { useState } from "react";
import { call } from "../../../service/client";
import { useText } from "../../../strings/text";
import styles from "../Booking.module.css";
import { cancelBody, declineBody, noEnding, type Ending } from "./ending";
import { CauseChoice, EndingNote, WorkDone } from "./EndingFields";
import { MoveForm } from "./MoveForm";
import type { MoveProps } from "./Moves";
import { useMove } from "../use-move";

const useDecline = ({ id, revision }: MoveProps["appointment"], ending: Ending) =>
  useMove({ id }, () =>
    call("appointments.decline", { params: { id }, ifMatch: revision, body: declineBody(ending) }),
  );

/** An inspector declines with or without a word; a dealer names a cause about the car or the site. */
export const DeclineVisit = ({ appointment }: MoveProps) => {
  const t = useText();
  const [ending, onChange] = useState(noEnding);
  const decline = useDecline(appointment, ending);
  const deals = appointment.as === "dealer";
  const entered = { appointment, ending, onChange };
  return (
    <MoveForm
      appointment={appointment}
      of="decline"
      hint={deals ? t("moves.decline.dealer") : undefined}
      moving={decline}
      isReady={!deals || ending.cause !== ""}
      onSubmit={() => decline.mutate(undefined)}
    >
      {deals && <CauseChoice {...entered} label={t("moves.decline.cause")} />}
      <EndingNote {...entered} />
    </MoveForm>
  );
};

const useCancel = ({ id, revision, as }: MoveProps["appointment"], ending: Ending) =>
  useMove({ id }, (cause: CancellationCause) =>
    call("appointments.cancel", {
      params: { id },
      ifMatch: revision,
      body: cancelBody(ending, cause, as === "inspector"),
    }),
  );

/** Cancelling, with what each cause would settle at this moment. */
export const CancelVisit = ({ appointment }: MoveProps) => {
  const t = useText();
  const [ending, onChange] = useState(noEnding);
  const cancel = useCancel(appointment, ending);
  const { cause } = ending;
  const entered = { appointment, ending, onChange };
  return (
    <MoveForm
      appointment={appointment}
      of="cancel"
      hint={t("moves.cancel.what")}
      moving={cancel}
      isReady={cause !== ""}
      onSubmit={() => {
        if (cause !== "") cancel.mutate(cause);
      }}
    >
      <CauseChoice {...entered} label={t("moves.cancel.cause")} />
      <WorkDone {...entered} />
      <EndingNote {...entered} />
      <p className={styles.hint}>{t("moves.cancel.sure")}</p>
    </MoveForm>
  );
};
