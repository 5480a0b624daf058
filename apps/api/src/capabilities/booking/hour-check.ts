import { canBook } from "@evenhand/booking/can-book";
import type { RefusedHour } from "@evenhand/booking/refused-hour";
import { type VisitCost, visitCost } from "@evenhand/booking/visit-cost";
import { Injectable } from "@nestjs/common";
import type { Transaction } from "../../platform/database/database.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { LaidOutHours } from "../calendars/index.ts";
import type { Stay } from "./appointment-store.ts";
import type { Search } from "./offer-search.ts";
import { readWorld, toCalendar, toRequest, type WorldInspector } from "./world.ts";

const DAY = 86_400_000;

export type Asked = {
  readonly start: number;
  readonly bays: readonly string[];
  /** The total that was shown; `null` where the visit keeps the price it was booked at. */
  readonly total: number | null;
  /** The notice period was kept when the hour was asked for; an answer to it is not bound by it again. */
  readonly noticeKept?: boolean;
};
export type CheckedHour =
  | {
      readonly kind: "free";
      readonly end: number;
      readonly stays: Stay[];
      readonly cost: VisitCost;
      readonly inspector: WorldInspector;
    }
  | { readonly kind: "refused"; readonly reasons: readonly RefusedHour[] };

/** Asks whether an hour can be booked as things stand in the transaction, with the inspector's row held. */
@Injectable()
export class HourCheck {
  constructor(private readonly laidOut: LaidOutHours) {}

  /** @throws ProblemError `not-admitted` where the inspector takes no work */
  async check(
    tx: Transaction,
    search: Search & { readonly inspector: string },
    { start, bays, total, noticeKept = false }: Asked,
    now: number,
  ): Promise<CheckedHour> {
    const horizon = { start: start - DAY, end: start + search.plan.length + DAY };
    const world = await readWorld(tx, { ...search, horizon, now });
    const [inspector] = world.inspectors;
    if (inspector === undefined)
      throw new ProblemError("not-admitted", "This inspector takes no work here now; choose another offer.");
    const currency = search.currency ?? world.site.fees.currency;
    const request = toRequest(world, this.laidOut, { ...search, currency, horizon });
    const known = toCalendar(world, inspector, this.laidOut, { now, horizon });
    const calendar = noticeKept ? { ...known, notice: Number.NEGATIVE_INFINITY } : known;
    const cost = { total: total ?? visitCost(request, calendar).total };
    const offer = { start, bays: bays.map((bay) => ({ bay })), cost };
    const decision = canBook(offer, { now, request, inspector: calendar });
    if (decision.kind === "refused") return decision;
    return { kind: "free", end: decision.end, stays: [...decision.bays], cost: decision.cost, inspector };
  }
}
