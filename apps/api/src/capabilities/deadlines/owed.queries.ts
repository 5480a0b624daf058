import { bookingStep, offerStep, type OwedStep, settlingStep } from "@evenhand/case/owed-steps";
import { CaseDecision, type CaseParty, CaseVisitState } from "@evenhand/shared/http/cases";
import { SettlementState } from "@evenhand/shared/settlement";
import { literals } from "../../platform/database/literals.ts";
import { zoneOfVehicle } from "../sites/index.ts";

/** Something that has a deadline, in SQL over its row `r`. */
type Owing = {
  readonly table: string;
  readonly state: string;
  /** What each state waits for. */
  readonly steps: ReadonlyMap<string, OwedStep>;
  readonly deadline: string;
  /** When the move came that opened it. */
  readonly begun: string;
  readonly parties: Readonly<Record<CaseParty, string>>;
  readonly vehicle: string;
  /** What the page is about where the step is taken. */
  readonly about: string;
  readonly zone: string;
  /** Whether it waits for its step at all. */
  readonly waits: string;
};

const stepsOf = <S extends string>(states: readonly S[], stepOf: (state: S) => OwedStep | null) =>
  new Map(
    states.flatMap((state) => {
      const step = stepOf(state);
      return step === null ? [] : [[state, step] as const];
    }),
  );

const zoneOfCar = zoneOfVehicle("r.vehicle_id");

/** Hours of a look that is booked are the visit's: it goes on, as settling has it. */
const isBooked = `EXISTS (SELECT 1 FROM inspection_order io WHERE io.vehicle_id = r.vehicle_id
  AND io.buyer_id = r.buyer_id AND io.state IN ('ordered', 'accepted'))`;

const line: Owing = {
  table: "release",
  state: "r.state",
  steps: stepsOf(SettlementState.options, settlingStep),
  deadline: "r.deadline",
  begun: "coalesce((SELECT max(m.at) FROM settlement_move m WHERE m.release_id = r.id), r.released_at)",
  parties: { buyer: "r.buyer_id", dealer: "r.dealer_id", inspector: "r.inspector_id" },
  vehicle: "r.vehicle_id",
  about: "r.vehicle_id",
  zone: zoneOfCar,
  waits: `NOT (r.state = 'looking-again' AND ${isBooked})`,
};

const visit: Owing = {
  table: "appointment",
  state: "r.state",
  steps: stepsOf(CaseVisitState.options, bookingStep),
  deadline: "r.deadline",
  begun: "coalesce((SELECT max(m.at) FROM appointment_move m WHERE m.appointment_id = r.id), r.created_at)",
  parties: { buyer: "r.buyer_id", dealer: "r.dealer_id", inspector: "r.firm_id" },
  vehicle:
    "(SELECT ac.vehicle_id FROM appointment_car ac WHERE ac.appointment_id = r.id ORDER BY ac.place LIMIT 1)",
  about: "r.id",
  zone: "(SELECT s.hours->>'zone' FROM site s WHERE s.id = r.site_id)",
  waits: "true",
};

const offer: Owing = {
  table: "decision",
  state: "CASE WHEN r.answer = 'counter' THEN 'countered-back' ELSE 'countered' END",
  steps: stepsOf(CaseDecision.options, offerStep),
  deadline: "CASE WHEN r.answer = 'counter' THEN r.back_until ELSE r.stands_until END",
  begun: "CASE WHEN r.answer = 'counter' THEN r.answered_at ELSE r.decided_at END",
  parties: { buyer: "r.buyer_id", dealer: "r.dealer_id", inspector: "NULL" },
  vehicle: "r.vehicle_id",
  about: "r.id",
  zone: zoneOfCar,
  waits: `r.decision = 'counter' AND r.ended IS NULL AND (r.answer IS NULL OR (r.answer = 'counter' AND r.reply IS NULL))`,
};

/** By state, what the rule says of its step. */
const byState = ({ state, steps }: Owing, say: (step: OwedStep) => string): string =>
  `CASE ${state} ${[...steps].map(([each, step]) => `WHEN '${each}' THEN ${say(step)}`).join(" ")} END`;

const statementOf = (owing: Owing, lock: "" | "FOR SHARE OF r"): string => `
  SELECT one.*, coalesce(one.site_zone, o.zone) AS zone
  FROM (SELECT r.id AS subject, ${byState(owing, ({ step }) => literals([step]))} AS step,
      ${byState(owing, ({ silence }) => literals([silence]))} AS silence,
      ${byState(owing, ({ of }) => `${owing.parties[of]}::uuid`)} AS organization,
      ${owing.about} AS about, ${owing.vehicle} AS vehicle, ${owing.begun} AS begun, ${owing.deadline} AS deadline,
      ${owing.zone} AS site_zone
    FROM ${owing.table} r
    WHERE ${owing.deadline} > $1::timestamptz AND ${owing.deadline} <= $1::timestamptz + interval '1 day'
      AND ${owing.state} IN (${literals([...owing.steps.keys()])}) AND ${owing.waits}
      AND ($2::uuid[] IS NULL OR r.id = ANY($2::uuid[]))
    ORDER BY r.id ${lock}) one
  JOIN organization o ON o.id = one.organization
  WHERE NOT EXISTS (SELECT 1 FROM deadline_notice n WHERE n.organization_id = one.organization
    AND n.subject = one.subject AND n.step = one.step AND n.deadline = one.deadline)
  ORDER BY one.subject`;

/**
 * What is due within a day of `$1` and nobody was told of; `$2` null, or the only rows that are asked about. `locked`: held against
 * whoever moves one on, until the transaction ends.
 */
export const owedStatements = [line, visit, offer].map((owing) => ({
  seen: statementOf(owing, ""),
  locked: statementOf(owing, "FOR SHARE OF r"),
}));
