import { Injectable } from "@nestjs/common";
import type { Consequence } from "@evenhand/booking/appointment";
import { isTold, orderEndAfter, type Role, toldOf, type ToldMove } from "@evenhand/booking/parties";
import type { AppointmentMove } from "@evenhand/shared/booking";
import type { NewsKind } from "@evenhand/shared/http/notices";
import type { Transaction } from "../../platform/database/database.ts";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { NoticesService } from "../notices/index.ts";
import { VisitOrdersService } from "../orders/index.ts";
import { Payments } from "../payments/index.ts";
import type { StoredAppointment } from "./appointment-store.ts";
import { VisitInvitations } from "./invitations.service.ts";

export type Done = {
  readonly appointment: StoredAppointment;
  readonly move: AppointmentMove;
  readonly actor: Role | "clock";
  readonly account: string | null;
  readonly interests: string[];
  /** When the clock has to look again. */
  readonly due: Date | null;
};

/** In the order in which they are locked. */
const ordersOf = ({ cars }: StoredAppointment): string[] =>
  cars.flatMap(({ order }) => order ?? []).toSorted((a, b) => (a < b ? -1 : 1));

const newsOf: Readonly<Record<ToldMove, NewsKind>> = {
  request: "appointment-requested",
  accept: "appointment-accepted",
  decline: "appointment-declined",
  confirm: "appointment-confirmed",
  reschedule: "appointment-rescheduled",
  cancel: "appointment-cancelled",
  miss: "appointment-missed",
  expire: "appointment-expired",
};

/** Does what a move brings with it, in its transaction: orders, payments, invitations, notices, and when to look again. */
@Injectable()
export class AppointmentEffects {
  constructor(
    private readonly orders: VisitOrdersService,
    private readonly payments: Payments,
    private readonly invitations: VisitInvitations,
    private readonly notices: NoticesService,
    private readonly jobs: Jobs,
  ) {}

  async apply(tx: Transaction, done: Done, consequences: readonly Consequence[]): Promise<void> {
    for (const consequence of consequences) await this.one(tx, done, consequence);
    await this.tell(tx, done);
    if (done.due !== null) await this.jobs.enqueue(tx, "appointment", done.appointment.id, done.due);
  }

  private async one(tx: Transaction, done: Done, consequence: Consequence): Promise<void> {
    const { appointment } = done;
    switch (consequence.code) {
      case "freeze-statement":
        return this.order(tx, done);
      case "hide-statement":
        for (const order of ordersOf(appointment))
          await this.orders.accept(tx, order, done.account ?? "", done.interests);
        return;
      case "capture-payment":
        return this.payments.capture(tx, appointment.id, consequence);
      case "release-payment":
        return this.payments.release(tx, appointment.id);
      case "settle":
        return this.payments.settle(tx, appointment.id, consequence.settlement);
      case "release-hour":
        return this.endOrders(tx, done);
      case "invite":
        return this.invitations.send(tx, appointment, consequence);
      default:
        return;
    }
  }

  /** An order a car, made or taken up; from here on the statement compared is fixed. */
  private async order(tx: Transaction, { appointment, account }: Done): Promise<void> {
    const { id, buyer, firm, cars } = appointment;
    for (const { vehicle } of cars) {
      const order = await this.orders.orderFor(tx, { vehicle, buyer, firm, account: account ?? "" });
      await tx.appointmentCar.updateMany({
        where: { appointmentId: id, vehicleId: vehicle },
        data: { orderId: order },
      });
    }
  }

  private async endOrders(tx: Transaction, { appointment, move, actor }: Done): Promise<void> {
    const end = orderEndAfter(move, actor);
    if (end === null) return;
    for (const order of ordersOf(appointment)) await this.orders.end(tx, order, end.state, end.reason);
  }

  /** Everybody whom it concerns, except whoever did it. */
  private async tell(tx: Transaction, { appointment, move, actor }: Done): Promise<void> {
    const [first] = appointment.cars;
    if (first === undefined || !isTold(move)) return;
    const { buyer, firm, dealer, declaredAt } = appointment;
    const organizations = { buyer, inspector: firm, dealer };
    const about = { kind: newsOf[move], subject: appointment.id, vehicle: first.vehicle };
    for (const role of toldOf({ move, actor, from: appointment.visit.state, declaredAt }))
      await this.notices.tell(tx, { organization: organizations[role], ...about });
  }
}
