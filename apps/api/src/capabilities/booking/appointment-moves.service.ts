import { Injectable } from "@nestjs/common";
import type { MoveFacts } from "@evenhand/booking/appointment";
import { splitConflicts } from "@evenhand/booking/independence";
import { answersAll, isBriefComplete } from "@evenhand/booking/visit-brief";
import type {
  BookingAcceptance,
  BookingCancellation,
  BookingConfirmation,
  BookingRefusal,
  BookingRequest,
  Rescheduling,
  RoadClearance,
} from "@evenhand/shared/http/booking";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { AdmissionsService } from "../admissions/index.ts";
import { InterestsService } from "../calendars/index.ts";
import { Payments } from "../payments/index.ts";
import { type StoredAppointment } from "./appointment-store.ts";
import { readRoadFacts } from "./road-facts.ts";
import { HourCheck } from "./hour-check.ts";
import { allSealed, MovesService, type Prepared, searchFor } from "./moves.service.ts";
import { RunOutHolds } from "./run-out-holds.ts";

type Plain = { actor: Actor; id: string; meant: number };

/** The moves of a booking, each with what has to be found out before it. */
@Injectable()
export class AppointmentMovesService {
  constructor(
    private readonly moves: MovesService,
    private readonly hours: HourCheck,
    private readonly runOut: RunOutHolds,
    private readonly interests: InterestsService,
    private readonly payments: Payments,
    private readonly admissions: AdmissionsService,
  ) {}

  /** The buyer books what they hold: terms seen, payment set aside, the statement frozen. */
  request(tx: Transaction, by: Plain, { terms }: BookingRequest): Promise<CreatedDraft> {
    return this.moves.move(tx, { ...by, move: "request", among: ["buyer"] }, async (stored, _role, now) => {
      await this.admissions.requireAdmitted(tx, stored.firm, stored.inspector);
      const { minor, currency } = { minor: stored.visit.cost.total, currency: stored.visit.cost.currency };
      const running = stored.visit.deadline !== null && now < stored.visit.deadline;
      const ready = stored.visit.state === "held" && running && terms === stored.visit.terms.version;
      const { facts, stays } = await this.askHour(tx, stored, now);
      return {
        stays,
        facts: {
          ...facts,
          briefComplete: isBriefComplete(stored.cars),
          termsAcknowledged: terms,
          paymentAuthorized: ready && (await this.payments.authorize(tx, stored.id, { minor, currency })),
        },
      };
    });
  }

  /** The inspector declares independence and everything there is to declare, and takes the visit. */
  accept(tx: Transaction, by: Plain, body: BookingAcceptance): Promise<CreatedDraft> {
    return this.moves.move(
      tx,
      { ...by, move: "accept", among: ["inspector"] },
      async (stored, _role, now) => {
        const { inspector, dealer } = stored;
        await this.admissions.requireAdmitted(tx, stored.firm, inspector);
        for (const interest of body.interests)
          await this.interests.store(tx, by.actor, inspector, { ...interest, dealer });
        for (const dealing of body.dealings)
          await this.interests.storeDealing(tx, by.actor, inspector, dealing);
        const { facts, stays } = await this.askHour(tx, stored, now);
        const { refusedHour, conflicts } = splitConflicts(facts.refusedHour ?? []);
        return {
          stays,
          more: { declaredAt: new Date(now) },
          interests: body.interests.map(({ holder, kind }) => `${holder}: ${kind}`),
          facts: {
            refusedHour,
            declaredAt: now,
            independence: { mayAccept: conflicts.length === 0, conflicts },
          },
        };
      },
    );
  }

  /** The inspector declines the visit; the dealer the hour, with a cause about the car or the site. */
  decline(tx: Transaction, by: Plain, { cause, note }: BookingRefusal): Promise<CreatedDraft> {
    const asking = { ...by, move: "decline", among: ["inspector", "dealer"] } as const;
    return this.moves.move(tx, asking, () => ({ note, facts: cause === undefined ? {} : { cause } }));
  }

  /** The dealer gives access at this hour, and answers for every item that needs to be allowed. */
  confirm(
    tx: Transaction,
    by: Plain,
    { permissions, heldFromSaleUntil }: BookingConfirmation,
  ): Promise<CreatedDraft> {
    return this.moves.move(tx, { ...by, move: "confirm", among: ["dealer"] }, async (stored, _role, now) => {
      const { facts, stays } = await this.askHour(tx, stored, now);
      const until =
        heldFromSaleUntil === undefined ? {} : { heldFromSaleUntil: Date.parse(heldFromSaleUntil) };
      return {
        stays,
        more: { permissions },
        facts: { ...facts, accessAgreed: answersAll(stored.plan.toAllow, permissions), ...until },
      };
    });
  }

  reschedule(tx: Transaction, by: Plain, { offer }: Rescheduling): Promise<CreatedDraft> {
    return this.moves.move(
      tx,
      { ...by, move: "reschedule", among: ["buyer"] },
      async (stored, _role, now) => {
        if (offer.inspector !== stored.inspector)
          throw new ProblemError(
            "invalid-fields",
            "A visit is moved with its inspector. For another one, cancel and book anew.",
            { problems: [{ at: "/offer/inspector", reason: "the visit's own inspector" }] },
          );
        const { inspector, site } = stored;
        const cars = stored.cars.map(({ vehicle }) => vehicle);
        await this.runOut.end(tx, { inspector, site, cars }, now);
        const start = Date.parse(offer.start);
        const asked = { start, bays: offer.bays.map(({ bay }) => bay), total: null };
        const checked = await this.hours.check(tx, searchFor(stored), asked, now);
        const newHour = { start, end: start + stored.plan.length };
        if (checked.kind === "free") return { stays: checked.stays, facts: { newHour, refusedHour: [] } };
        return { facts: { newHour, refusedHour: checked.reasons } };
      },
    );
  }

  cancel(tx: Transaction, by: Plain, { cause, note, work }: BookingCancellation): Promise<CreatedDraft> {
    const among = ["buyer", "inspector", "dealer", "operator"] as const;
    return this.moves.move(tx, { ...by, move: "cancel", among }, (stored, role) => {
      const known = work !== undefined && role === "inspector";
      const minutesPlanned = stored.plan.length / 60_000;
      const done = known ? { work: { ...work, minutesPlanned } } : {};
      return { note, facts: { cause, ...done } };
    });
  }

  start(tx: Transaction, by: Plain): Promise<CreatedDraft> {
    return this.moves.move(tx, { ...by, move: "start", among: ["inspector"] }, async (stored) => {
      await this.admissions.requireAdmitted(tx, stored.firm, stored.inspector);
      return { facts: {} };
    });
  }

  /** Papers there, the gate looked at, nothing open that holds, steers or stops the car. It says no more than that. */
  takeToRoad(tx: Transaction, by: Plain, clearance: RoadClearance): Promise<CreatedDraft> {
    return this.moves.move(tx, { ...by, move: "take-to-road", among: ["inspector"] }, async (stored) => ({
      more: { road: clearance },
      facts: { road: await readRoadFacts(tx, stored, clearance) },
    }));
  }

  miss(tx: Transaction, by: Plain): Promise<CreatedDraft> {
    const among = ["buyer", "dealer", "operator"] as const;
    return this.moves.move(tx, { ...by, move: "miss", among }, () => ({ facts: {} }));
  }

  report(tx: Transaction, by: Plain): Promise<CreatedDraft> {
    return this.moves.move(tx, { ...by, move: "report", among: ["inspector"] }, async (stored) => ({
      facts: { reportSealed: await allSealed(tx, stored) },
    }));
  }

  /** The hour as it stands now, the visit's own time left out. The notice was kept when it was asked for. */
  private async askHour(
    tx: Transaction,
    stored: StoredAppointment,
    now: number,
  ): Promise<{ facts: Pick<MoveFacts, "refusedHour">; stays: Prepared["stays"] }> {
    const { visit, bays } = stored;
    const asked = { start: visit.hour.start, bays, total: null, noticeKept: true };
    const checked = await this.hours.check(tx, searchFor(stored), asked, now);
    if (checked.kind === "refused") return { facts: { refusedHour: checked.reasons }, stays: undefined };
    const moved = checked.stays.some(({ bay }, spell) => bay !== bays[spell]);
    return { facts: { refusedHour: [] }, stays: moved ? checked.stays : undefined };
  }
}
