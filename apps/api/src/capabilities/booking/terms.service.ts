import { Injectable } from "@nestjs/common";
import { type CancellationTerms, DEFAULT_TERMS } from "@evenhand/booking/cancellation-terms";
import { BookingTerms, type BookingTermsSeen } from "@evenhand/shared/http/booking";
import { z } from "zod";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { findRow, run, type Source, sql } from "../../platform/database/rows.ts";
import { termsBody, toTerms } from "./bodies.ts";

const newest = "SELECT revision, document FROM booking_terms ORDER BY revision DESC LIMIT 1";

const TermsRow = z.object({ revision: z.number(), document: BookingTerms });

/** The terms under which visits are booked from now on. An appointment keeps the ones it was booked under. */
@Injectable()
export class TermsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  async get(): Promise<BookingTermsSeen> {
    return seen(this.database);
  }

  async current(tx: Transaction): Promise<CancellationTerms> {
    return toTerms((await seen(tx)).terms);
  }

  async put(actor: Actor, meant: number, terms: BookingTerms): Promise<BookingTermsSeen> {
    return this.database.transaction(async (tx) => {
      await run(tx, sql`SELECT pg_advisory_xact_lock(hashtext('booking terms'))`);
      const { revision } = await seen(tx);
      checkRevision(revision, meant);
      const data = { document: terms, createdBy: actor.account, createdAt: this.clock.now() };
      await tx.bookingTerms.create({ data: { ...data, revision: revision + 1 } });
      return { revision: revision + 1, terms };
    });
  }
}

async function seen(source: Source): Promise<BookingTermsSeen> {
  const row = await findRow(source, TermsRow, { text: newest });
  return row === null
    ? { revision: 0, terms: termsBody(DEFAULT_TERMS) }
    : { revision: row.revision, terms: row.document };
}
