import type { SettlementState } from "@evenhand/shared/settlement";

/** Who owes the next step, and in how many working hours of the site. Our own. */
type Owed = { readonly of: "buyer" | "dealer" | "inspector"; readonly hours: number };

const owed: Partial<Record<SettlementState, Owed>> = {
  released: { of: "dealer", hours: 24 },
  contested: { of: "buyer", hours: 24 },
  "price-offered": { of: "buyer", hours: 24 },
  "remedy-offered": { of: "buyer", hours: 24 },
  "look-offered": { of: "buyer", hours: 24 },
  refused: { of: "dealer", hours: 16 },
  asked: { of: "inspector", hours: 24 },
  revising: { of: "inspector", hours: 24 },
  "looking-again": { of: "buyer", hours: 80 },
  promised: { of: "dealer", hours: 80 },
  proved: { of: "buyer", hours: 24 },
};

/**
 * Who owes the next step of a line, and in how many working hours of the site; `null` at an end.
 *
 * @example owedIn("released") // { of: "dealer", hours: 24 }
 */
export const owedIn = (state: SettlementState): Owed | null => owed[state] ?? null;
