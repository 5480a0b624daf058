import { Radio } from "@mantine/core";
import type { VisitPlan } from "@evenhand/shared/http/booking";
import { useState } from "react";
import { useIntl } from "react-intl";
import { call } from "../../../service/client";
import { useText } from "../../../strings/text";
import { TextField, TickField } from "../../../ui/Fields";
import { useItemWords } from "../../../entities/sheet/item-words";
import { useCarName } from "../../../entities/car/CarName";
import styles from "../Booking.module.css";
import { VisitCaution } from "../VisitCaution";
import { useLiftWords } from "../use-lift-words";
import {
  accessBody,
  isAllowed,
  mayConfirm,
  nothingAnswered,
  permissionKey,
  withPermission,
  type Access,
} from "./access";
import { MoveForm } from "./MoveForm";
import type { MoveProps } from "./Moves";
import { useMove } from "../use-move";

interface PartProps extends MoveProps {
  readonly answers: Access;
  readonly onChange: (answers: Access) => void;
}

/** What is asked for, with the car where the visit has several. */
const useAsked = ({ cars }: MoveProps["appointment"]): ((one: VisitPlan["toAllow"][number]) => string) => {
  const t = useText();
  const words = useItemWords();
  const name = useCarName();
  return (one) => {
    const item = words({ item: one.item, position: "" });
    const car = cars.length > 1 ? cars.find(({ id }) => id === one.car) : undefined;
    return car === undefined ? item : t("moves.confirm.allow", { item, car: name(car) });
  };
};

const Permissions = ({ appointment, answers, onChange }: PartProps) => {
  const t = useText();
  const asked = useAsked(appointment);
  const { toAllow } = appointment.plan;
  if (toAllow.length === 0) return null;
  return (
    <div className={styles.part}>
      <h3>{t("moves.confirm.permissions")}</h3>
      {toAllow.map((one) => (
        <Radio.Group
          key={permissionKey(one)}
          label={asked(one)}
          value={String(isAllowed(answers, one) ?? "")}
          onChange={(value) => onChange(withPermission(answers, one, value === "true"))}
        >
          <div className={styles.buttons} style={{ gap: "1.2rem", paddingTop: "0.4rem" }}>
            <Radio size="md" value="true" label={t("moves.confirm.allow.yes")} />
            <Radio size="md" value="false" label={t("moves.confirm.allow.no")} />
          </div>
        </Radio.Group>
      ))}
    </div>
  );
};

const AccessTick = ({ appointment, answers, onChange }: PartProps) => {
  const t = useText();
  const intl = useIntl();
  const lifts = useLiftWords(appointment);
  return (
    <TickField
      label={
        lifts.length === 0
          ? t("moves.confirm.access.no-lift")
          : t("moves.confirm.access", { bays: intl.formatList(lifts, { type: "conjunction" }) })
      }
      checked={answers.access}
      onChange={(access) => onChange({ ...answers, access })}
    />
  );
};

const useConfirm = ({ id, revision, plan, zone }: MoveProps["appointment"], answers: Access) =>
  useMove({ id }, () =>
    call("appointments.confirm", {
      params: { id },
      ifMatch: revision,
      body: accessBody(answers, plan.toAllow, zone),
    }),
  );

/** The dealer confirms car, site and lift at this hour, and answers what needs permission. */
export const ConfirmAccess = ({ appointment }: MoveProps) => {
  const t = useText();
  const [answers, onChange] = useState(nothingAnswered);
  const confirm = useConfirm(appointment, answers);
  const { plan } = appointment;
  return (
    <MoveForm
      appointment={appointment}
      of="confirm"
      moving={confirm}
      isReady={mayConfirm(answers, plan.toAllow)}
      onSubmit={() => confirm.mutate(undefined)}
    >
      <VisitCaution plan={plan} />
      <Permissions appointment={appointment} answers={answers} onChange={onChange} />
      <TextField
        type="datetime-local"
        style={{ maxWidth: "26rem" }}
        label={t("moves.confirm.held")}
        description={t("moves.confirm.held.hint")}
        value={answers.heldUntil}
        onChange={(heldUntil) => onChange({ ...answers, heldUntil })}
      />
      <AccessTick appointment={appointment} answers={answers} onChange={onChange} />
    </MoveForm>
  );
};
