import { useState } from "react";
import { useIntl } from "react-intl";
import { call } from "../../../service/client";
import { useText } from "../../../strings/text";
import { TickField } from "../../../ui/Fields";
import { moneyText } from "../../../ui/money";
import { VisitCaution } from "../VisitCaution";
import { MoveForm } from "./MoveForm";
import type { MoveProps } from "./Moves";
import { useMove } from "../use-move";

const useRequest = ({ id, revision, terms }: MoveProps["appointment"]) =>
  useMove({ id }, () =>
    call("appointments.request", { params: { id }, ifMatch: revision, body: { terms: terms.version } }),
  );

/** The buyer asks for the hour that is held, under terms that were read. */
export const RequestHour = ({ appointment }: MoveProps) => {
  const t = useText();
  const intl = useIntl();
  const [read, setRead] = useState(false);
  const [pays, setPays] = useState(false);
  const request = useRequest(appointment);
  const { terms, cost, plan } = appointment;
  const total = cost === null ? "" : moneyText(intl, cost.total);
  return (
    <MoveForm
      appointment={appointment}
      of="request"
      hint={t("moves.request.what")}
      moving={request}
      isReady={read && pays}
      onSubmit={() => request.mutate(undefined)}
    >
      <VisitCaution plan={plan} />
      <TickField
        label={t("moves.request.terms", { version: terms.version, total })}
        checked={read}
        onChange={setRead}
      />
      <TickField label={t("moves.request.pays")} checked={pays} onChange={setPays} />
    </MoveForm>
  );
};
