import type { OrderState } from "@evenhand/shared/http/orders";
import { LIVE_ORDERS } from "../order-states/index.ts";

/** A car as a buyer would order an inspection of it. */
export type OrderableCar = {
  readonly listed: boolean;
  /** The version of the dealer's statement sealed last. */
  readonly newestStatement: string | null;
  /** The buyer's order with this firm that still stands. */
  readonly liveOrder: string | null;
};

/** Why a car is not ordered. */
export type OrderRefusal =
  | { readonly because: "not-listed" }
  | { readonly because: "statement-superseded"; readonly newest: string | null }
  | { readonly because: "ordered-already"; readonly order: string };

/**
 * Why a buyer may not order an inspection against a statement: the dealer has withdrawn the car, another statement is newer (what is
 * bought by must be what was read), or the same firm has an order of theirs already. Our own.
 *
 * @returns `null` where it may be ordered
 * @example orderRefusal({ listed: true, newestStatement: "s2", liveOrder: null }, "s1")
 * // { because: "statement-superseded", newest: "s2" }
 */
export const orderRefusal = (
  { listed, newestStatement, liveOrder }: OrderableCar,
  statement: string,
): OrderRefusal | null => {
  if (!listed) return { because: "not-listed" };
  if (newestStatement !== statement) return { because: "statement-superseded", newest: newestStatement };
  return liveOrder === null ? null : { because: "ordered-already", order: liveOrder };
};

/** The order a visit is made under. */
export type VisitOrderChoice =
  | { readonly of: "standing"; readonly order: string }
  | { readonly of: "new"; readonly statement: string }
  | { readonly of: "none"; readonly because: "not-listed" };

/**
 * Which order a visit is made under: the buyer's that still stands, whatever was sealed since; else a new one against the newest
 * statement, while the car is listed.
 *
 * @example orderOfVisit({ listed: true, newestStatement: "s2", liveOrder: null }) // { of: "new", statement: "s2" }
 */
export const orderOfVisit = ({ listed, newestStatement, liveOrder }: OrderableCar): VisitOrderChoice => {
  if (liveOrder !== null) return { of: "standing", order: liveOrder };
  return listed && newestStatement !== null
    ? { of: "new", statement: newestStatement }
    : { of: "none", because: "not-listed" };
};

/**
 * Whether an order ends with its visit: one that still stands, unless something was found already, since what is begun can be sealed.
 *
 * @example endsWithVisit("accepted", { hasReport: true }) // false
 */
export const endsWithVisit = (state: OrderState, { hasReport }: { readonly hasReport: boolean }): boolean =>
  LIVE_ORDERS.includes(state) && !hasReport;

/** Whether somebody belongs to the inspection firm and to another party of the order. */
export type SharedPeople = { readonly withDealer: boolean; readonly withBuyer: boolean };

/**
 * Whether a firm is independent of those it would inspect for: who belongs to both would inspect for themselves, or buy what they
 * inspect. Source: the idea of ISO/IEC 17020:2012, 4.1.6, read in secondary texts; that a shared member is enough is our own.
 *
 * @example isIndependent({ withDealer: false, withBuyer: true }) // false
 */
export const isIndependent = ({ withDealer, withBuyer }: SharedPeople): boolean => !withDealer && !withBuyer;
