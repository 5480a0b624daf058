import { Injectable } from "@nestjs/common";
import {
  decide,
  DEFAULT_APPOINTMENT_RULES,
  dueMove,
  type MoveFacts,
  nextLook,
} from "@evenhand/booking/appointment";
import type { Role } from "@evenhand/booking/parties";
import type { AppointmentMove } from "@evenhand/shared/booking";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { exists } from "../../platform/database/rows.ts";
import { AppointmentEffects } from "./appointment-effects.ts";
import {
  findLocked,
  getLocked,
  type MoreColumns,
  type Stay,
  type StoredAppointment,
  writeHistory,
  writeMove,
  writeTimes,
} from "./appointment-store.ts";
import { HourTaken, isRace } from "./hour-taken.ts";
import { moveProblem } from "./move-problems.ts";
import type { Search } from "./offer-search.ts";
import { requireRole } from "./roles.ts";

/** A move as it is asked for, with what was found out for it. */
export type Prepared = {
  readonly facts: MoveFacts;
  readonly more?: MoreColumns;
  readonly note?: string | undefined;
  readonly interests?: string[];
  /** Stays on the lift where they change. */
  readonly stays?: readonly Stay[] | undefined;
};
export type Asking = {
  readonly actor: Actor;
  readonly id: string;
  /** The revision meant. */
  readonly meant: number;
  readonly move: AppointmentMove;
  readonly among: readonly Role[];
};
type By = { readonly actor: Role | "clock"; readonly account: string | null };

/** The search that would find other hours for this visit. */
export const searchFor = (stored: StoredAppointment): Search & { inspector: string; moving: string } => ({
  site: stored.site,
  cars: stored.cars.map(({ vehicle }) => vehicle),
  plan: stored.plan,
  barred: [],
  skills: [],
  currency: stored.visit.cost.currency,
  inspector: stored.inspector,
  moving: stored.id,
});

/** Every move of an appointment: decided by the table, written where it is still as it was read, with all that follows from it. */
@Injectable()
export class MovesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly effects: AppointmentEffects,
    private readonly record: RecordChain,
  ) {}

  async move(
    tx: Transaction,
    asking: Asking,
    prepare: (stored: StoredAppointment, role: Role, now: number) => Promise<Prepared> | Prepared,
  ): Promise<CreatedDraft> {
    const { actor, id, meant, move, among } = asking;
    const stored = await getLocked(tx, id);
    const role = requireRole(actor, stored, move, among);
    checkRevision(stored.revision, meant);
    const prepared = await prepare(stored, role, this.clock.now().getTime());
    await this.perform(tx, stored, move, { actor: role, account: actor.account }, prepared);
    return { id, revision: stored.revision + 1 };
  }

  /** @throws ProblemError or HourTaken where the table or its conditions refuse */
  async perform(
    tx: Transaction,
    stored: StoredAppointment,
    move: AppointmentMove,
    by: By,
    { facts, more = {}, note, interests = [], stays }: Prepared,
  ): Promise<void> {
    const now = this.clock.now().getTime();
    const decision = decide(stored.visit, move, by.actor, now, facts);
    if (decision.kind === "refused") throw refusalOf(decision.refusal, stored, by);
    const { appointment: next, consequences } = decision;
    const settled = consequences.find((each) => each.code === "settle");
    const settlement = settled === undefined ? {} : { settlement: { ...settled.settlement } };
    try {
      await writeMove(tx, stored, next, { ...more, ...settlement });
      if (stays !== undefined)
        await writeTimes(tx, { id: stored.id, state: next.state, plan: stored.plan }, next.hour.start, stays);
    } catch (error) {
      if (isRace(error)) throw new HourTaken([], searchFor(stored));
      throw error;
    }
    const entry = {
      id: this.ids.next(),
      appointment: stored.id,
      number: stored.revision + 1,
      at: now,
      ...by,
      move,
      state: next.state,
    };
    await writeHistory(tx, { ...entry, hour: next.hour, cause: facts.cause, note });
    this.note(tx, stored, entry, next.requestedAt !== null);
    const changed = { ...stored, cars: stored.cars };
    await this.effects.apply(
      tx,
      { appointment: changed, move, ...by, interests, due: dateOf(nextLook(next)) },
      consequences,
    );
  }

  /** A move of a visit that was asked for stands in the record of its three parties; an hour that was only held is nobody's history. */
  private note(
    tx: Transaction,
    { id, buyer, dealer, firm }: StoredAppointment,
    { move, state, number, account, actor }: By & { move: AppointmentMove; state: string; number: number },
    isAskedFor: boolean,
  ): void {
    if (!isAskedFor) return;
    const organizations = [buyer, dealer, firm];
    const content = { move, state, number, by: actor };
    this.record.append(tx, { kind: "visit.moved", organizations, subject: id, actor: account, content });
  }

  /** Looks at one appointment again: what was not answered in time is over, and who did not come has missed it. */
  async lookAt(id: string): Promise<void> {
    // Most were ended meanwhile: one read says so, and nothing is locked.
    if (!(await this.isDue(id))) return;
    await this.database.transaction(async (tx) => {
      const stored = await findLocked(tx, id);
      if (stored === undefined) return;
      const move = dueMove(stored.visit, this.clock.now().getTime());
      if (move === null) return;
      await this.perform(tx, stored, move, { actor: "clock", account: null }, { facts: {} });
    });
  }

  private async isDue(id: string): Promise<boolean> {
    const now = this.clock.now();
    const begun = new Date(now.getTime() - DEFAULT_APPOINTMENT_RULES.grace);
    return exists(this.database, {
      text: `SELECT id FROM appointment WHERE id = $3::uuid AND ${DUE}`,
      values: [now, begun, id],
    });
  }
}

/** Of a row of `appointment`: what the clock must end. $1 is now, $2 when a visit began that nobody came to. */
export const DUE =
  "((state IN ('held', 'requested', 'accepted') AND deadline <= $1) OR (state = 'confirmed' AND starts_at <= $2))";

/** Is there a sealed inspection for every car of the visit? */
export async function allSealed(tx: Transaction, { cars }: StoredAppointment): Promise<boolean> {
  const orders = cars.flatMap(({ order }) => (order === null ? [] : [order]));
  const sealed = await tx.inspectionOrder.count({ where: { id: { in: orders }, state: "reported" } });
  return orders.length === cars.length && sealed === orders.length;
}

const dateOf = (at: number | null): Date | null => (at === null ? null : new Date(at));

type Refusal = Parameters<typeof moveProblem>[0];

/** A buyer whose hour has gone is shown others. */
function refusalOf(refusal: Refusal, stored: StoredAppointment, { actor }: By): Error {
  if (refusal.code === "conditions" && actor === "buyer") {
    const hour = refusal.shortfalls.find((each) => each.code === "hour-free");
    if (hour?.code === "hour-free" && hour.reasons.length > 0)
      return new HourTaken(hour.reasons, searchFor(stored));
  }
  return moveProblem(refusal);
}
