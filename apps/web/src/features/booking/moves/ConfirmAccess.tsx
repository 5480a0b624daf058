import { Button, Checkbox, Radio, TextInput } from "@mantine/core";
import type { VisitPlan } from "@evenhand/shared/http/booking";
import { useState, type FormEvent } from "react";
import { useIntl } from "react-intl";
import { call } from "../../../service/client";
import { useText } from "../../../strings/text";
import { Panel } from "../../../ui/Page";
import { useTimes } from "../../../entities/time/use-times";
import { instantOf } from "../../../entities/time/zone-time";
import { useItemWords } from "../../../entities/sheet/item-words";
import { useCarName } from "../../../entities/car/CarName";
import styles from "../Booking.module.css";
import { VisitCaution } from "../PlanView";
import { MoveProblem } from "../MoveProblem";
import type { MoveProps } from "./Moves";
import { useMove } from "../use-move";

const keyOf = ({ car, item }: { readonly car: string; readonly item: string }): string => `${car} ${item}`;

/** The dealer confirms car, site and lift at this hour, and answers what needs permission. */
export const ConfirmAccess = ({ appointment }: MoveProps) => {
  const t = useText();
  const intl = useIntl();
  const times = useTimes();
  const words = useItemWords();
  const name = useCarName();
  const { zone, bays, plan, cars } = appointment;
  const [access, setAccess] = useState(false);
  const [allowed, setAllowed] = useState<Readonly<Record<string, boolean>>>({});
  const [until, setUntil] = useState("");
  const answered = plan.toAllow.every((one) => allowed[keyOf(one)] !== undefined);
  const confirm = useMove(appointment, () =>
    call("appointments.confirm", {
      params: { id: appointment.id },
      ifMatch: appointment.revision,
      body: {
        access: true,
        permissions: plan.toAllow.map((one) => ({ ...one, allowed: allowed[keyOf(one)] ?? false })),
        ...(until === "" ? {} : { heldFromSaleUntil: instantOf(until, zone) }),
      },
    }),
  );
  const labelOf = (one: VisitPlan["toAllow"][number]): string => {
    const item = words({ item: one.item, position: "" });
    const car = cars.length > 1 ? cars.find(({ id }) => id === one.car) : undefined;
    return car === undefined ? item : t("moves.confirm.allow", { item, car: name(car) });
  };
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    confirm.mutate(undefined);
  };
  const lifts = bays.map((one) =>
    t("appointment.bay.line", { bay: one.bay.name, range: times.range(one.start, one.end, zone) }),
  );
  return (
    <Panel title={t("moves.confirm.title")}>
      <form className={styles.form} onSubmit={submit}>
        {confirm.error !== null && <MoveProblem error={confirm.error} appointment={appointment} />}
        <VisitCaution plan={plan} />
        {plan.toAllow.length > 0 && (
          <div className={styles.part}>
            <h3>{t("moves.confirm.permissions")}</h3>
            {plan.toAllow.map((one) => (
              <Radio.Group
                key={keyOf(one)}
                label={labelOf(one)}
                value={allowed[keyOf(one)] === undefined ? "" : String(allowed[keyOf(one)])}
                onChange={(value) => setAllowed({ ...allowed, [keyOf(one)]: value === "true" })}
              >
                <div className={styles.buttons} style={{ gap: "1.2rem", paddingTop: "0.4rem" }}>
                  <Radio size="md" value="true" label={t("moves.confirm.allow.yes")} />
                  <Radio size="md" value="false" label={t("moves.confirm.allow.no")} />
                </div>
              </Radio.Group>
            ))}
          </div>
        )}
        <TextInput
          size="md"
          type="datetime-local"
          style={{ maxWidth: "26rem" }}
          label={t("moves.confirm.held")}
          description={t("moves.confirm.held.hint")}
          value={until}
          onChange={(event) => setUntil(event.currentTarget.value)}
        />
        <Checkbox
          size="md"
          label={
            lifts.length === 0
              ? t("moves.confirm.access.no-lift")
              : t("moves.confirm.access", { bays: intl.formatList(lifts, { type: "conjunction" }) })
          }
          checked={access}
          onChange={(event) => setAccess(event.currentTarget.checked)}
        />
        <div>
          <Button type="submit" size="md" disabled={!access || !answered} loading={confirm.isPending}>
            {t("moves.confirm.do")}
          </Button>
        </div>
      </form>
    </Panel>
  );
};
