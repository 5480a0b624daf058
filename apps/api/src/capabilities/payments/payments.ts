import type { Settlement } from "@evenhand/booking/cancellation-terms";
import type { Transaction } from "../../platform/database/database.ts";

export type Amount = { readonly minor: number; readonly currency: string };

/**
 * Where money is moved. The buyer orders and pays, whatever the verdict. Each request names its appointment, so that asking twice
 * moves nothing twice; no card and no account number ever reaches the service.
 */
export abstract class Payments {
  /** Sets the amount aside with the buyer's own means. @returns whether that worked */
  abstract authorize(tx: Transaction, appointment: string, amount: Amount): Promise<boolean>;
  abstract capture(tx: Transaction, appointment: string, amount: Amount): Promise<void>;
  /** Gives back what was set aside and never taken. */
  abstract release(tx: Transaction, appointment: string): Promise<void>;
  /** Gives back, pays out and claims, as the terms have it. */
  abstract settle(tx: Transaction, appointment: string, settlement: Settlement): Promise<void>;
}
