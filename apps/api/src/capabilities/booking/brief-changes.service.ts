import { Injectable } from "@nestjs/common";
import { type BriefMove, decideBrief, OPEN_TO_CHANGE } from "@evenhand/booking/brief";
import { compiledSheet as sheet } from "@evenhand/record/report-document";
import type { Role } from "@evenhand/booking/parties";
import type { RefusedHour } from "@evenhand/booking/refused-hour";
import { briefOf, depthOf } from "@evenhand/booking/visit-brief";
import type { VisitPlan } from "@evenhand/booking/visit-plan";
import { Vehicle } from "@evenhand/shared/report";
import type { BriefAnswer, BriefProposal } from "@evenhand/shared/http/booking";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { toJson } from "../../platform/database/to-json.ts";
import { Clock } from "../../platform/clock/index.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { found, notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { NoticesService } from "../notices/index.ts";
import {
  getLocked,
  noBrief,
  type Stay,
  type StoredAppointment,
  type StoredCar,
  writeTimes,
} from "./appointment-store.ts";
import { checkChosen, requirePlan } from "./brief-items.ts";
import { HourCheck } from "./hour-check.ts";
import { briefProblem } from "./move-problems.ts";
import { searchFor } from "./moves.service.ts";
import { rolesOf } from "./roles.ts";

type Booked = { plan: VisitPlan; reasons: readonly RefusedHour[]; stays: Stay[]; end: number };
type Change = { stored: StoredAppointment; car: StoredCar; by: Role; move: BriefMove };

/** Changes of a booked brief: the buyer proposes until a day before, the inspector agrees, and the hour must hold it. */
@Injectable()
export class BriefChangesService {
  constructor(
    private readonly clock: Clock,
    private readonly hours: HourCheck,
    private readonly notices: NoticesService,
  ) {}

  async propose(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    { vehicle, depth, items }: BriefProposal,
  ): Promise<CreatedDraft> {
    const { stored, car } = await this.lock(tx, actor, id, meant, vehicle, "buyer");
    const { document } = await tx.vehicle.findUniqueOrThrow({
      where: { id: vehicle },
      select: { document: true },
    });
    const { form } = Vehicle.parse(document);
    checkChosen(form, items);
    const move: BriefMove = {
      kind: "propose",
      by: "buyer",
      items: briefOf(sheet, form, depth ?? depthOf(sheet, car.brief), items).items,
    };
    return this.decide(tx, { stored, car, by: "buyer", move });
  }

  async answer(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    { vehicle, answer }: BriefAnswer,
  ): Promise<CreatedDraft> {
    const by = answer === "withdraw" ? "buyer" : "inspector";
    const { stored, car } = await this.lock(tx, actor, id, meant, vehicle, by);
    const move: BriefMove =
      answer === "withdraw" ? { kind: answer, by: "buyer" } : { kind: answer, by: "inspector" };
    return this.decide(tx, { stored, car, by, move });
  }

  private async lock(tx: Transaction, actor: Actor, id: string, meant: number, vehicle: string, role: Role) {
    const stored = await getLocked(tx, id);
    if (!rolesOf(actor, stored).includes(role)) throw notFound("appointment");
    checkRevision(stored.revision, meant);
    if (!OPEN_TO_CHANGE.includes(stored.visit.state))
      throw new ProblemError("appointment-state", `It is ${stored.visit.state}; its brief stands.`, {
        members: { state: stored.visit.state },
      });
    const car = found(
      stored.cars.find((each) => each.vehicle === vehicle),
      "car of this visit",
    );
    return { stored, car };
  }

  private async decide(tx: Transaction, change: Change): Promise<CreatedDraft> {
    const { stored, car, move } = change;
    const now = this.clock.now().getTime();
    const wanted = move.kind === "propose" ? move.items : (car.proposed?.items ?? car.brief);
    const booked = await this.ask(tx, stored, car.vehicle, wanted, now);
    const brief = { version: car.briefVersion, items: car.brief, proposed: car.proposed };
    const decision = decideBrief(brief, move, {
      now,
      start: stored.visit.hour.start,
      refusedHour: booked.reasons,
    });
    if (decision.kind === "refused") throw briefProblem(decision.refusal);
    const { version, items, proposed } = decision.brief;
    const data = {
      briefVersion: version,
      brief: [...items],
      proposed: proposed === null ? noBrief : { items: [...proposed.items], at: proposed.at },
    };
    await tx.appointmentCar.updateMany({ where: { appointmentId: stored.id, vehicleId: car.vehicle }, data });
    const replanned = version !== car.briefVersion;
    const more = replanned ? { plan: toJson(booked.plan), endsAt: new Date(booked.end) } : {};
    const revision = stored.revision + 1;
    await tx.appointment.update({ where: { id: stored.id }, data: { ...more, revision } });
    if (replanned)
      await writeTimes(
        tx,
        { id: stored.id, state: stored.visit.state, plan: booked.plan },
        stored.visit.hour.start,
        booked.stays,
      );
    await this.tell(tx, change);
    return { id: stored.id, revision };
  }

  /** Does the booked hour hold the visit with this brief, its own time left out? */
  private async ask(
    tx: Transaction,
    stored: StoredAppointment,
    vehicle: string,
    items: readonly StoredCar["brief"][number][],
    now: number,
  ): Promise<Booked> {
    const cars = stored.cars.map((car) => ({
      id: car.vehicle,
      items: car.vehicle === vehicle ? items : car.brief,
    }));
    const plan = requirePlan(cars);
    const { start } = stored.visit.hour;
    const asked = { start, bays: stored.bays, total: null, noticeKept: true };
    const checked = await this.hours.check(tx, { ...searchFor(stored), plan }, asked, now);
    const end = start + plan.length;
    if (checked.kind === "free") return { plan, reasons: [], stays: checked.stays, end };
    return { plan, reasons: checked.reasons, stays: [], end };
  }

  private async tell(tx: Transaction, { stored, car, by }: Change): Promise<void> {
    if (stored.visit.requestedAt === null) return;
    const kind = by === "buyer" ? "brief-proposed" : "brief-answered";
    const organization = by === "buyer" ? stored.firm : stored.buyer;
    await this.notices.tell(tx, { organization, kind, subject: stored.id, vehicle: car.vehicle });
  }
}
