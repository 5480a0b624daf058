import { Button } from "@mantine/core";
import { useReducer, type Dispatch } from "react";
import { call } from "../../../service/client";
import { useText } from "../../../strings/text";
import { TickField } from "../../../ui/Fields";
import { Notice } from "../../../ui/Notice";
import { useCarName } from "../../../entities/car/CarName";
import { DealingFields, InterestFields } from "../../../entities/declaration/DeclarationFields";
import styles from "../Booking.module.css";
import { VisitCaution } from "../VisitCaution";
import { declaredAfter, declaredBody, nothingDeclared, type Declared, type DeclaredStep } from "./declared";
import { MoveForm } from "./MoveForm";
import type { MoveProps } from "./Moves";
import { useMove } from "../use-move";

const useAccept = ({ id, revision, zone }: MoveProps["appointment"], declared: Declared) =>
  useMove({ id }, () =>
    call("appointments.accept", {
      params: { id },
      ifMatch: revision,
      body: declaredBody(declared, zone),
    }),
  );

interface PartProps extends MoveProps {
  readonly declared: Declared;
  readonly step: Dispatch<DeclaredStep>;
}

const Interests = ({ appointment: { dealer, zone }, declared, step }: PartProps) => {
  const t = useText();
  const { interests, dealings } = declared;
  return (
    <div className={styles.part}>
      <h3>{t("moves.accept.interest", { dealer: dealer.name })}</h3>
      {interests.length === 0 && dealings.length === 0 && (
        <p className={styles.hint}>{t("moves.accept.none")}</p>
      )}
      {interests.map((one) => (
        <InterestFields
          key={one.key}
          value={one}
          onChange={(interest) => step({ step: "change-interest", interest })}
          onRemove={() => step({ step: "remove-interest", key: one.key })}
        />
      ))}
      <div>
        <Button variant="default" onClick={() => step({ step: "add-interest", zone })}>
          {t("moves.accept.interest.add")}
        </Button>
      </div>
    </div>
  );
};

const Dealings = ({ appointment: { cars }, declared, step }: PartProps) => {
  const t = useText();
  const name = useCarName();
  const named = cars.map((car) => ({ id: car.id, name: name(car) }));
  const vehicle = cars[0]?.id ?? "";
  return (
    <div className={styles.part}>
      <h3>{t("moves.accept.dealing")}</h3>
      {declared.dealings.map((one) => (
        <DealingFields
          key={one.key}
          value={one}
          cars={named}
          onChange={(dealing) => step({ step: "change-dealing", dealing })}
          onRemove={() => step({ step: "remove-dealing", key: one.key })}
        />
      ))}
      <div>
        <Button variant="default" onClick={() => step({ step: "add-dealing", vehicle })}>
          {t("moves.accept.dealing.add")}
        </Button>
      </div>
    </div>
  );
};

/** The inspector declares what there is to declare, then accepts. */
export const AcceptVisit = ({ appointment }: MoveProps) => {
  const t = useText();
  const [declared, step] = useReducer(declaredAfter, nothingDeclared);
  const accept = useAccept(appointment, declared);
  return (
    <MoveForm
      appointment={appointment}
      of="accept"
      hint={t("moves.accept.what")}
      moving={accept}
      isReady={declared.independent}
      onSubmit={() => accept.mutate(undefined)}
    >
      <Notice kind="note">
        <p>{t("moves.accept.blind")}</p>
      </Notice>
      <Interests appointment={appointment} declared={declared} step={step} />
      <Dealings appointment={appointment} declared={declared} step={step} />
      <p className={styles.hint}>{t("moves.accept.warning")}</p>
      <VisitCaution plan={appointment.plan} />
      <TickField
        label={t("moves.accept.independent", { dealer: appointment.dealer.name })}
        checked={declared.independent}
        onChange={(independent) => step({ step: "independent", independent })}
      />
    </MoveForm>
  );
};
