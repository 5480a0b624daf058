import { Inject, Injectable } from "@nestjs/common";
import { holdHour } from "@evenhand/booking/appointment";
import { findHoldRefusal, type HoldRefusal } from "@evenhand/booking/hold-bounds";
import { greatCircleTravel } from "@evenhand/booking/travel";
import type { VisitPlan } from "@evenhand/booking/visit-plan";
import type { HoldRequest } from "@evenhand/shared/http/booking";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { CONFIG, type Config } from "../../platform/config/index.ts";
import { oneAtATime } from "../../platform/database/bounds.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { toJson } from "../../platform/database/to-json.ts";
import { findRow, IdRow, readRows, sql } from "../../platform/database/rows.ts";
import { OpenCases } from "../cases/index.ts";
import { writeHistory, writeTimes } from "./appointment-store.ts";
import { requirePlan } from "./brief-items.ts";
import { type CheckedHour, HourCheck } from "./hour-check.ts";
import { HourTaken, isRace } from "./hour-taken.ts";
import type { Search } from "./offer-search.ts";
import { RunOutHolds } from "./run-out-holds.ts";
import { TermsService } from "./terms.service.ts";
import { buyerOf, readCars, type VisitCar } from "./visit-cars.ts";
import { readBarred } from "./world.ts";

const LiveHold = z.object({ id: z.string(), cars: z.array(z.string()), deadline: z.date() });

type FreeHour = Extract<CheckedHour, { kind: "free" }>;
type Visit = { cars: readonly VisitCar[]; plan: VisitPlan; site: string; dealer: string };
type Hold = Visit & { free: FreeHour; start: number; now: number };

/** Takes an hour for a buyer while the booking is filled in: under the inspector's lock, asked for as things stand then. */
@Injectable()
export class HoldsService {
  constructor(
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly jobs: Jobs,
    private readonly hours: HourCheck,
    private readonly runOut: RunOutHolds,
    private readonly terms: TermsService,
    private readonly cases: OpenCases,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** @throws HourTaken where the hour cannot be had any more */
  async hold(tx: Transaction, actor: Actor, { vehicles, offer }: HoldRequest): Promise<CreatedDraft> {
    const now = this.clock.now().getTime();
    const cars = await readCars(tx, actor, vehicles);
    const [{ site, dealer }] = cars;
    const plan = requirePlan(cars);
    const barred = await readBarred(tx, [dealer, ...actor.organizations("buyer")]);
    const ids = cars.map(({ id }) => id);
    const search: Search = { site, cars: ids, plan, barred, skills: [], currency: offer.total.currency };
    await this.keepWithinBounds(tx, buyerOf(actor), ids, now);
    await lockInspector(tx, offer.inspector);
    await this.runOut.end(tx, { inspector: offer.inspector, site, cars: ids }, now);
    const asked = {
      start: Date.parse(offer.start),
      bays: offer.bays.map(({ bay }) => bay),
      total: offer.total.minor,
    };
    const checked = await this.hours.check(tx, { ...search, inspector: offer.inspector }, asked, now);
    if (checked.kind === "refused") throw new HourTaken(checked.reasons, search);
    const hold = { cars, plan, site, dealer, free: checked, start: asked.start, now };
    try {
      return await this.store(tx, actor, hold);
    } catch (error) {
      if (isRace(error)) throw new HourTaken([], search);
      throw error;
    }
  }

  /** One who asks for many hours at once waits here, so that each sees what the one before has taken. */
  private async keepWithinBounds(tx: Transaction, buyer: string, cars: string[], now: number): Promise<void> {
    await oneAtATime(tx, "holds", buyer);
    const rows = await readRows(
      tx,
      LiveHold,
      sql`
      SELECT a.id, a.deadline, array_agg(c.vehicle_id::text) AS cars
      FROM appointment a JOIN appointment_car c ON c.appointment_id = a.id
      WHERE a.buyer_id = ${buyer}::uuid AND a.state = 'held' AND a.deadline > ${new Date(now)} GROUP BY a.id`,
    );
    const open = rows.map(({ deadline, ...hold }) => ({ ...hold, until: deadline.getTime() }));
    const refusal = findHoldRefusal(open, cars, this.config.booking.holdsOfABuyer);
    if (refusal !== null) throw holdsOpen(refusal, now);
  }

  private async store(tx: Transaction, actor: Actor, hold: Hold): Promise<CreatedDraft> {
    const { cars, plan, free, start, now } = hold;
    const id = this.ids.next();
    const vehicles = cars.map((car) => car.id);
    await this.cases.open(tx, buyerOf(actor), vehicles);
    const hour = { start, end: free.end };
    const held = holdHour(hour, free.cost, await this.terms.current(tx), now);
    await tx.appointment.create({
      data: {
        id,
        state: held.state,
        revision: 1,
        inspectorId: free.inspector.id,
        firmId: free.inspector.firm.id,
        siteId: hold.site,
        dealerId: hold.dealer,
        buyerId: buyerOf(actor),
        startsAt: new Date(hour.start),
        endsAt: new Date(hour.end),
        deadline: new Date(held.deadline ?? now),
        cost: held.cost,
        terms: toJson(held.terms),
        plan: toJson(plan),
        travel: await travelOf(tx, hold),
        paid: false,
        carriedShare: 0,
        permissions: [],
        createdBy: actor.account,
        createdAt: new Date(now),
      },
    });
    await storeCars(tx, id, plan, cars, start);
    await writeTimes(tx, { id, state: held.state, plan }, start, free.stays);
    const entry = { id: this.ids.next(), appointment: id, number: 1, at: now, account: actor.account, hour };
    await writeHistory(tx, { ...entry, actor: "buyer", move: "hold", state: "held" });
    await this.jobs.enqueue(tx, "appointment", id, new Date(held.deadline ?? now));
    return { id, revision: 1 };
  }
}

function holdsOpen({ code, hold }: HoldRefusal, now: number): ProblemError {
  const minutes = Math.max(1, Math.ceil((hold.until - now) / 60_000));
  const what =
    code === "car-held-already" ? "an hour for this car" : "as many hours as one buyer may hold at once";
  return new ProblemError(
    "holds-open",
    `You hold ${what} already. Book it or cancel it, or wait ${minutes} ${minutes === 1 ? "minute" : "minutes"} until ${code === "car-held-already" ? "it" : "the first"} runs out.`,
    { members: { appointment: hold.id }, headers: { "retry-after": String(minutes * 60) } },
  );
}

async function lockInspector(tx: Transaction, id: string): Promise<void> {
  const row = await findRow(
    tx,
    IdRow,
    sql`
    SELECT id FROM inspector_calendar WHERE id = ${id}::uuid FOR UPDATE`,
  );
  if (row === null)
    throw new ProblemError("not-admitted", "This inspector takes no work here now; choose another offer.");
}

async function travelOf(tx: Transaction, { free: { inspector }, site }: Hold) {
  const at = await tx.site.findUniqueOrThrow({
    where: { id: site },
    select: { latitude: true, longitude: true },
  });
  const [out, back] = [
    greatCircleTravel(inspector.base, at, inspector.speed),
    greatCircleTravel(at, inspector.base, inspector.speed),
  ];
  return {
    outMeters: Math.round(out.meters),
    outMinutes: out.milliseconds / 60_000,
    backMinutes: back.milliseconds / 60_000,
  };
}

/** In the order of their ids, so that two who want the same cars wait for each other and never in a ring. */
async function storeCars(
  tx: Transaction,
  appointment: string,
  plan: VisitPlan,
  cars: readonly VisitCar[],
  start: number,
): Promise<void> {
  const spans = cars.map((car, place) => ({
    car,
    place,
    span: plan.cars.find((each) => each.car === car.id),
  }));
  for (const { car, place, span } of spans.toSorted((a, b) => (a.car.id < b.car.id ? -1 : 1))) {
    if (span === undefined) throw new Error(`the plan leaves ${car.id} out`);
    await tx.appointmentCar.create({
      data: {
        appointmentId: appointment,
        vehicleId: car.id,
        place,
        state: "held",
        startsAt: new Date(start + span.from),
        endsAt: new Date(start + span.to),
        needsCold: span.needsCold,
        warms: span.warms,
        briefVersion: 1,
        brief: [...car.items],
      },
    });
  }
}
