import { Injectable } from "@nestjs/common";
import { z } from "zod";
import { instantOfLocal } from "@evenhand/booking/local-time";
import type { DemoVisit, DemoVisitMove } from "@evenhand/shared/demo-scenario";
import type { ChosenOffer } from "@evenhand/shared/http/booking";
import {
  AppointmentMovesService,
  HoldsService,
  HourTaken,
  OffersService,
  TermsService,
} from "../capabilities/booking/index.ts";
import { dateIn } from "../capabilities/calendars/index.ts";
import type { Actor } from "../platform/auth/actor.ts";
import type { DemoWorld } from "./demo-world.ts";

const DAY = 86_400_000;
const PlannedPermissions = z.looseObject({
  toAllow: z.array(z.strictObject({ car: z.string(), item: z.string() })),
});

const hoursOfStart = ["08:00", "09:00", "10:00", "11:00", "13:00"];

/** Books the visits of the scenario as people do: brief, hold, request, and the answers of those who are asked. */
@Injectable()
export class DemoVisits {
  constructor(
    private readonly offers: OffersService,
    private readonly holds: HoldsService,
    private readonly moves: AppointmentMovesService,
    private readonly terms: TermsService,
  ) {}

  /** @returns the hour it is booked for */
  async book(world: DemoWorld, visit: DemoVisit, today: Date): Promise<Date> {
    const buyer = world.actor(visit.buyer);
    const vehicle = world.get("vehicle", visit.vehicle);
    await this.offers.putBriefIn(world.tx, buyer, vehicle, 0, { depth: visit.depth, items: [] });
    const held = await this.holdFirstFree(world, visit, today);
    world.set("visit", visit.key, held.id);
    const { version } = await this.terms.current(world.tx);
    await this.moves.request(world.tx, { actor: buyer, id: held.id, meant: 1 }, { terms: version });
    return held.start;
  }

  async move(world: DemoWorld, { key }: DemoVisit, move: DemoVisitMove): Promise<void> {
    const by = await this.by(world, world.actor(move.by), world.get("visit", key));
    if (move.move === "accept")
      await this.moves.accept(world.tx, by, { independent: true, interests: move.interests, dealings: [] });
    else if (move.move === "confirm") await this.moves.confirm(world.tx, by, await this.access(world, by.id));
    else await this.moves.cancel(world.tx, by, { cause: move.cause, note: move.note });
  }

  /** Sets the order that the visit has become, so that a report can belong to it. */
  async begin(world: DemoWorld, { key, begun }: DemoVisit): Promise<void> {
    if (begun === undefined) return;
    const id = world.get("visit", key);
    await this.moves.start(world.tx, await this.by(world, world.actor(begun.by), id));
    const car = await world.tx.appointmentCar.findFirstOrThrow({ where: { appointmentId: id } });
    if (car.orderId === null) throw new Error(`The visit "${key}" has no order.`);
    world.set("order", key, car.orderId);
  }

  private async by(
    { tx }: DemoWorld,
    actor: Actor,
    id: string,
  ): Promise<{ actor: Actor; id: string; meant: number }> {
    const { revision } = await tx.appointment.findUniqueOrThrow({ where: { id } });
    return { actor, id, meant: revision };
  }

  /** The dealer allows everything that has to be allowed. */
  private async access({ tx }: DemoWorld, id: string) {
    const { plan } = await tx.appointment.findUniqueOrThrow({ where: { id } });
    const { toAllow } = PlannedPermissions.parse(plan);
    return { access: true as const, permissions: toAllow.map((each) => ({ ...each, allowed: true })) };
  }

  /** Asks for one hour after the other until one is free, at the price a refusal names. */
  private async holdFirstFree(
    world: DemoWorld,
    visit: DemoVisit,
    today: Date,
  ): Promise<{ id: string; start: Date }> {
    const calendar = world.get("calendar", visit.calendar);
    const { zone, currency } = world.timeOf(visit.calendar);
    for (const day of visit.days) {
      const date = dateIn(today.getTime() + day * DAY, zone);
      for (const hour of hoursOfStart) {
        const start = new Date(instantOfLocal(`${date}T${hour}:00`, zone));
        const offer = { inspector: calendar, start: start.toISOString(), bays: [] };
        const id = await this.hold(world, visit, offer, currency);
        if (id !== null) return { id, start };
      }
    }
    throw new Error(`No hour of the visit "${visit.key}" is free.`);
  }

  private async hold(
    world: DemoWorld,
    visit: DemoVisit,
    offer: Omit<ChosenOffer, "total">,
    currency: string,
  ): Promise<string | null> {
    const vehicles = [world.get("vehicle", visit.vehicle)];
    let minor = 0;
    for (let asked = 0; asked < 2; asked += 1)
      try {
        const chosen = { ...offer, total: { minor, currency } };
        return (await this.holds.hold(world.tx, world.actor(visit.buyer), { vehicles, offer: chosen })).id;
      } catch (error) {
        if (!(error instanceof HourTaken)) throw error;
        const [reason, ...others] = error.reasons;
        if (reason?.code !== "price-changed" || others.length > 0) return null;
        minor = reason.total;
      }
    return null;
  }
}
