import { DAMAGE_BEARERS } from "@evenhand/shared/terms";
import { useState } from "react";
import { call } from "../../../service/client";
import { useText } from "../../../strings/text";
import { ChoiceField, TextField, TickField } from "../../../ui/Fields";
import { Notice } from "../../../ui/Notice";
import styles from "../Booking.module.css";
import { MoveForm } from "./MoveForm";
import type { MoveProps } from "./Moves";
import { clearanceOf, typedOf, type RoadTyped } from "./road-papers";
import { useMove } from "../use-move";

const fields = [
  { name: "consent", label: "moves.take-to-road.consent", type: "text" },
  { name: "signed", label: "moves.take-to-road.signed", type: "datetime-local" },
  { name: "insurance", label: "moves.take-to-road.insurance", type: "text" },
  { name: "insuranceUntil", label: "moves.take-to-road.insurance-until", type: "date" },
  { name: "plates", label: "moves.take-to-road.plates", type: "text" },
  { name: "platesUntil", label: "moves.take-to-road.plates-until", type: "date" },
] as const;

interface PapersProps {
  readonly value: RoadTyped;
  readonly onChange: (value: RoadTyped) => void;
}

/** Consent, insurance, plates, and who bears a damage. */
const Papers = ({ value, onChange }: PapersProps) => {
  const t = useText();
  return (
    <div className={styles.fields}>
      {fields.map(({ name, label, type }) => (
        <TextField
          key={name}
          type={type}
          label={t(label)}
          value={value[name]}
          onChange={(typed) => onChange({ ...value, [name]: typed })}
        />
      ))}
      <ChoiceField
        label={t("moves.take-to-road.damage")}
        value={value.damage}
        data={[
          { value: "", label: t("moves.take-to-road.damage.none") },
          ...DAMAGE_BEARERS.map((bearer) => ({ value: bearer, label: t(`damage.${bearer}`) })),
        ]}
        onChange={(damage) => onChange({ ...value, damage })}
      />
    </div>
  );
};

const RoadCaution = () => {
  const t = useText();
  return (
    <Notice kind="caution" title={t("plan.caution")}>
      <ul>
        <li>{t("plan.caution.road")}</li>
        <li>{t("plan.caution.law")}</li>
      </ul>
    </Notice>
  );
};

const useRecord = ({ id, revision, zone }: MoveProps["appointment"], typed: RoadTyped) =>
  useMove({ id }, () =>
    call("appointments.takeToRoad", {
      params: { id },
      ifMatch: revision,
      body: clearanceOf(typed, zone),
    }),
  );

/** What is recorded before the car is driven. The service refuses while anything is wanting. */
export const RoadForm = ({ appointment }: MoveProps) => {
  const t = useText();
  const { zone, road, plan } = appointment;
  const [typed, setTyped] = useState(() => typedOf(zone, road, new Date().toISOString()));
  const [gate, setGate] = useState(false);
  const record = useRecord(appointment, typed);
  if (!plan.segments.some(({ stage }) => stage === "road")) return null;
  return (
    <MoveForm
      appointment={appointment}
      of="take-to-road"
      hint={t("moves.take-to-road.what")}
      caution={<RoadCaution />}
      moving={record}
      isReady={gate}
      onSubmit={() => record.mutate(undefined)}
    >
      <Papers value={typed} onChange={setTyped} />
      <TickField label={t("moves.take-to-road.gate")} checked={gate} onChange={setGate} />
    </MoveForm>
  );
};
