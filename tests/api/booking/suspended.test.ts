import { beforeEach, describe, expect, test } from "vitest";
import {
  type BookingWorld,
  confirm,
  makeBookingWorld,
  monday,
  moveRefused,
  newClock,
  request,
} from "../setup/booking-story.ts";
import { useService } from "../setup/service.ts";
import { acceptOrder, header, order } from "../setup/story.ts";

const clock = newClock();
const service = useService({ clock });
let world: BookingWorld;
beforeEach(async () => {
  clock.set(monday);
  world = await makeBookingWorld(service());
});

const decide = (id: string, decision: "suspend" | "admit", revision: number) =>
  world.operator.does("admissions.decide", {
    path: { id },
    revision,
    body: { decision, reason: "Insurance lapsed." },
  });
const suspendFirm = () => decide(world.inspector.organization, "suspend", 0);

describe("a suspended firm", () => {
  test("is not ordered", async () => {
    await suspendFirm();
    const refused = await world.buyer.isRefused("orders.create", {
      path: { id: world.vehicle },
      body: { inspector: world.inspector.organization, statement: world.statement },
    });
    expect(refused.code).toBe("not-admitted");
    await decide(world.inspector.organization, "admit", 1);
    await order(world.buyer, world.inspector, world.vehicle, world.statement);
  });

  test("accepts no order, and may decline it", async () => {
    const id = await order(world.buyer, world.inspector, world.vehicle, world.statement);
    await suspendFirm();
    const body = { independent: true };
    const refused = await world.inspector.isRefused("orders.accept", { path: { id }, revision: 1, body });
    expect(refused.code).toBe("not-admitted");
    const reason = { reason: "We are suspended." };
    await world.inspector.does("orders.decline", { path: { id }, revision: 1, body: reason });
  });

  test("begins no inspection it had accepted", async () => {
    const id = await order(world.buyer, world.inspector, world.vehicle, world.statement);
    await acceptOrder(world.inspector, id);
    await suspendFirm();
    const refused = await world.inspector.isRefused("reports.inspect", { path: { id }, body: header });
    expect(refused.code).toBe("not-admitted");
    await decide(world.inspector.organization, "admit", 1);
    await world.inspector.does("reports.inspect", { path: { id }, body: header });
  });

  test("accepts no visit", async () => {
    const id = await request(service(), world);
    await suspendFirm();
    const body = { independent: true };
    const refused = await moveRefused(service(), world.inspector, "appointments.accept", id, body);
    expect(refused.code).toBe("not-admitted");
  });

  test("begins no visit", async () => {
    const id = await confirm(service(), world);
    await suspendFirm();
    const { start } = await world.buyer.does("appointments.get", { path: { id } });
    clock.set(new Date(start));
    const refused = await moveRefused(service(), world.inspector, "appointments.start", id);
    expect(refused.code).toBe("not-admitted");
  });
});

test("a suspended inspector accepts no visit", async () => {
  const id = await request(service(), world);
  await decide(world.calendar, "suspend", 2);
  const body = { independent: true };
  const refused = await moveRefused(service(), world.inspector, "appointments.accept", id, body);
  expect(refused.code).toBe("not-admitted");
});
