import { DAMAGE_BEARERS } from "@evenhand/shared/terms";
import { Button, Checkbox, NativeSelect, TextInput } from "@mantine/core";
import type { RoadClearance } from "@evenhand/shared/http/booking";
import { useState, type FormEvent } from "react";
import { call } from "../../../service/client";
import { useText } from "../../../strings/text";
import { Notice } from "../../../ui/Notice";
import { Panel } from "../../../ui/Page";
import { oneOf } from "../../../service/one-of";
import { instantOf, localOf } from "../../../entities/time/zone-time";
import styles from "../Booking.module.css";
import { MoveProblem } from "../MoveProblem";
import type { MoveProps } from "./Moves";
import { useMove } from "../use-move";

interface Typed {
  readonly consent: string;
  readonly signed: string;
  readonly insurance: string;
  readonly insuranceUntil: string;
  readonly plates: string;
  readonly platesUntil: string;
  readonly damage: string;
}

const paper = (reference: string, until: string, zone: string): RoadClearance["insurance"] =>
  reference.trim() === ""
    ? null
    : { reference: reference.trim(), validUntil: until === "" ? null : instantOf(`${until}T23:59`, zone) };

const clearanceOf = (typed: Typed, zone: string): RoadClearance => ({
  consent:
    typed.consent.trim() === "" || typed.signed === ""
      ? null
      : { by: typed.consent.trim(), signedAt: instantOf(typed.signed, zone) },
  insurance: paper(typed.insurance, typed.insuranceUntil, zone),
  plates: paper(typed.plates, typed.platesUntil, zone),
  damageBorneBy: oneOf(DAMAGE_BEARERS, typed.damage) ?? null,
});

const dayOf = (kept: RoadClearance["insurance"] | undefined, zone: string): string =>
  kept?.validUntil == null ? "" : localOf(kept.validUntil, zone).slice(0, 10);

const typedOf = (zone: string, road: RoadClearance | null): Typed => ({
  consent: road?.consent?.by ?? "",
  signed: localOf(road?.consent?.signedAt ?? new Date().toISOString(), zone),
  insurance: road?.insurance?.reference ?? "",
  insuranceUntil: dayOf(road?.insurance, zone),
  plates: road?.plates?.reference ?? "",
  platesUntil: dayOf(road?.plates, zone),
  damage: road?.damageBorneBy ?? "",
});

/** What is recorded before the car is driven. The service refuses while anything is wanting. */
export const RoadForm = ({ appointment }: MoveProps) => {
  const t = useText();
  const { zone } = appointment;
  const [typed, setTyped] = useState(() => typedOf(zone, appointment.road));
  const [gate, setGate] = useState(false);
  const record = useMove(appointment, () =>
    call("appointments.takeToRoad", {
      params: { id: appointment.id },
      ifMatch: appointment.revision,
      body: clearanceOf(typed, zone),
    }),
  );
  if (!appointment.plan.segments.some(({ stage }) => stage === "road")) return null;
  const field = (name: keyof Typed, label: string, type?: "date" | "datetime-local") => (
    <TextInput
      size="md"
      type={type}
      label={label}
      value={typed[name]}
      onChange={(event) => setTyped({ ...typed, [name]: event.currentTarget.value })}
    />
  );
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    record.mutate(undefined);
  };
  return (
    <Panel title={t("moves.take-to-road.title")} hint={t("moves.take-to-road.what")}>
      <form className={styles.form} onSubmit={submit}>
        <Notice kind="caution" title={t("plan.caution")}>
          <ul>
            <li>{t("plan.caution.road")}</li>
            <li>{t("plan.caution.law")}</li>
          </ul>
        </Notice>
        {record.error !== null && <MoveProblem error={record.error} appointment={appointment} />}
        <div className={styles.fields}>
          {field("consent", t("moves.take-to-road.consent"))}
          {field("signed", t("moves.take-to-road.signed"), "datetime-local")}
          {field("insurance", t("moves.take-to-road.insurance"))}
          {field("insuranceUntil", t("moves.take-to-road.insurance-until"), "date")}
          {field("plates", t("moves.take-to-road.plates"))}
          {field("platesUntil", t("moves.take-to-road.plates-until"), "date")}
          <NativeSelect
            size="md"
            label={t("moves.take-to-road.damage")}
            value={typed.damage}
            data={[
              { value: "", label: t("moves.take-to-road.damage.none") },
              ...DAMAGE_BEARERS.map((value) => ({ value, label: t(`damage.${value}`) })),
            ]}
            onChange={(event) => setTyped({ ...typed, damage: event.currentTarget.value })}
          />
        </div>
        <Checkbox
          size="md"
          label={t("moves.take-to-road.gate")}
          checked={gate}
          onChange={(event) => setGate(event.currentTarget.checked)}
        />
        <div>
          <Button type="submit" size="md" disabled={!gate} loading={record.isPending}>
            {t("moves.take-to-road.do")}
          </Button>
        </div>
      </form>
    </Panel>
  );
};
