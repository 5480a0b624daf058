import { Injectable } from "@nestjs/common";
import type { Settlement } from "@evenhand/booking/cancellation-terms";
import type { PaymentEntry } from "@evenhand/shared/http/booking";
import { Clock } from "../../platform/clock/index.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { type Amount, Payments } from "./payments.ts";

type Line = Pick<PaymentEntry, "kind" | "party"> & { minor: number };

/** Stands in for a provider: writes down what it was asked, and moves nothing. */
@Injectable()
export class RecordingPayments extends Payments {
  constructor(
    private readonly clock: Clock,
    private readonly ids: Ids,
  ) {
    super();
  }

  override async authorize(tx: Transaction, appointment: string, amount: Amount): Promise<boolean> {
    if ((await balance(tx, appointment, "authorized")) === null)
      await this.write(tx, appointment, amount.currency, [
        { kind: "authorized", party: "buyer", minor: amount.minor },
      ]);
    return true;
  }

  override async capture(tx: Transaction, appointment: string, amount: Amount): Promise<void> {
    if ((await balance(tx, appointment, "captured")) === null)
      await this.write(tx, appointment, amount.currency, [
        { kind: "captured", party: "buyer", minor: amount.minor },
      ]);
  }

  override async release(tx: Transaction, appointment: string): Promise<void> {
    const held = await balance(tx, appointment, "authorized");
    if (held === null || (await balance(tx, appointment, "released")) !== null) return;
    await this.write(tx, appointment, held.currency, [
      { kind: "released", party: "buyer", minor: held.minor },
    ]);
  }

  override async settle(tx: Transaction, appointment: string, settlement: Settlement): Promise<void> {
    const { buyerRefunded, dealerOwes, inspectorOwes, inspectorGets, siteGets, currency } = settlement;
    await this.write(tx, appointment, currency, [
      { kind: "refunded", party: "buyer", minor: buyerRefunded },
      { kind: "claimed", party: "dealer", minor: dealerOwes },
      { kind: "claimed", party: "inspector", minor: inspectorOwes },
      { kind: "paid-out", party: "inspector", minor: inspectorGets },
      { kind: "paid-out", party: "site", minor: siteGets },
    ]);
  }

  private async write(
    tx: Transaction,
    appointmentId: string,
    currency: string,
    lines: readonly Line[],
  ): Promise<void> {
    for (const line of lines)
      if (line.minor > 0)
        await tx.paymentEntry.create({
          data: { id: this.ids.next(), appointmentId, currency, at: this.clock.now(), ...line },
        });
  }
}

const balance = (tx: Transaction, appointmentId: string, kind: string): Promise<Amount | null> =>
  tx.paymentEntry.findFirst({
    where: { appointmentId, kind, party: "buyer" },
    select: { minor: true, currency: true },
  });
