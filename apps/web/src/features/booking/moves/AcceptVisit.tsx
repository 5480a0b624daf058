import { Button, Checkbox } from "@mantine/core";
import { useRef, useState, type FormEvent } from "react";
import { call } from "../../../service/client";
import { useText } from "../../../strings/text";
import { Notice } from "../../../ui/Notice";
import { Panel } from "../../../ui/Page";
import { useCarName } from "../../../entities/car/CarName";
import styles from "../Booking.module.css";
import { VisitCaution } from "../PlanView";
import { DealingFields, InterestFields } from "../../../entities/declaration/DeclarationFields";
import {
  interestBody,
  newInterest,
  type DealingTyped,
  type InterestTyped,
} from "../../../entities/declaration/declarations";
import { MoveProblem } from "../MoveProblem";
import type { MoveProps } from "./Moves";
import { useMove } from "../use-move";

const replaced = <T extends { readonly key: number }>(list: readonly T[], one: T): readonly T[] =>
  list.map((other) => (other.key === one.key ? one : other));

/** The inspector declares what there is to declare, then accepts. */
export const AcceptVisit = ({ appointment }: MoveProps) => {
  const t = useText();
  const name = useCarName();
  const { zone, dealer, cars } = appointment;
  const [interests, setInterests] = useState<readonly InterestTyped[]>([]);
  const [dealings, setDealings] = useState<readonly DealingTyped[]>([]);
  const [independent, setIndependent] = useState(false);
  const lastKey = useRef(0);
  const nextKey = (): number => (lastKey.current += 1);
  const accept = useMove(appointment, () =>
    call("appointments.accept", {
      params: { id: appointment.id },
      ifMatch: appointment.revision,
      body: {
        independent: true,
        interests: interests.map((one) => interestBody(one, zone)),
        dealings: dealings.map(({ vehicle, dealing, note }) => ({ vehicle, dealing, note })),
      },
    }),
  );
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    accept.mutate(undefined);
  };
  return (
    <Panel title={t("moves.accept.title")} hint={t("moves.accept.what")}>
      <form className={styles.form} onSubmit={submit}>
        {accept.error !== null && <MoveProblem error={accept.error} appointment={appointment} />}
        <Notice kind="note">
          <p>{t("moves.accept.blind")}</p>
        </Notice>
        <div className={styles.part}>
          <h3>{t("moves.accept.interest", { dealer: dealer.name })}</h3>
          {interests.length === 0 && dealings.length === 0 && (
            <p className={styles.hint}>{t("moves.accept.none")}</p>
          )}
          {interests.map((one) => (
            <InterestFields
              key={one.key}
              value={one}
              onChange={(next) => setInterests(replaced(interests, next))}
              onRemove={() => setInterests(interests.filter(({ key }) => key !== one.key))}
            />
          ))}
          <div>
            <Button
              variant="default"
              onClick={() => setInterests([...interests, newInterest(nextKey(), zone)])}
            >
              {t("moves.accept.interest.add")}
            </Button>
          </div>
        </div>
        <div className={styles.part}>
          <h3>{t("moves.accept.dealing")}</h3>
          {dealings.map((one) => (
            <DealingFields
              key={one.key}
              value={one}
              cars={cars.map((car) => ({ id: car.id, name: name(car) }))}
              onChange={(next) => setDealings(replaced(dealings, next))}
              onRemove={() => setDealings(dealings.filter(({ key }) => key !== one.key))}
            />
          ))}
          <div>
            <Button
              variant="default"
              onClick={() =>
                setDealings([
                  ...dealings,
                  { key: nextKey(), vehicle: cars[0]?.id ?? "", dealing: "repaired", note: "" },
                ])
              }
            >
              {t("moves.accept.dealing.add")}
            </Button>
          </div>
        </div>
        <p className={styles.hint}>{t("moves.accept.warning")}</p>
        <VisitCaution plan={appointment.plan} />
        <Checkbox
          size="md"
          label={t("moves.accept.independent", { dealer: dealer.name })}
          checked={independent}
          onChange={(event) => setIndependent(event.currentTarget.checked)}
        />
        <div>
          <Button type="submit" size="md" disabled={!independent} loading={accept.isPending}>
            {t("moves.accept.do")}
          </Button>
        </div>
      </form>
    </Panel>
  );
};
