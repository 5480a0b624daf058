import { Injectable, Logger, type OnModuleInit } from "@nestjs/common";
import { lastMorning } from "@evenhand/booking/last-morning";
import { NoticeKind } from "@evenhand/shared/http/notices";
import { digestLetter } from "@evenhand/wording/letter";
import { z } from "zod";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { readRows, sql } from "../../platform/database/rows.ts";
import { SiteAddress } from "../../platform/http/site-address.ts";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { Outbox } from "../../platform/mail/outbox.ts";
import { firmZone } from "./notices.queries.ts";

const Gatherer = z.object({ account: z.string(), email: z.string(), zone: z.string(), oldest: z.date() });
type Gatherer = z.infer<typeof Gatherer>;
const Gathered = z.object({ id: z.string(), kind: NoticeKind });

/** Whose news waits, and where their day begins: in the zone they chose, or in that of the organization they joined first. */
const waiting = `SELECT a.id AS account, a.email, coalesce(a.news_zone, home.zone) AS zone, min(n.created_at) AS oldest
  FROM notice n JOIN account a ON a.id = n.account_id
  JOIN LATERAL (SELECT ${firmZone("a.id")} AS zone) home ON home.zone IS NOT NULL
  WHERE n.mailing = 'waiting' GROUP BY a.id, a.email, home.zone ORDER BY a.id`;

/** Every morning at seven, on the clock of whoever reads it, what waits for somebody goes out as one letter. */
@Injectable()
export class DigestService implements OnModuleInit {
  private readonly logger = new Logger("digest");

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly jobs: Jobs,
    private readonly outbox: Outbox,
    private readonly site: SiteAddress,
  ) {}

  onModuleInit(): void {
    this.jobs.register("news-digest", async () => void (await this.gather()));
  }

  /**
   * One letter that cannot be written is said, and keeps no other from being written.
   *
   * @returns how many letters were written
   */
  async gather(): Promise<number> {
    const now = this.clock.now().getTime();
    let written = 0;
    for (const each of await readRows(this.database, Gatherer, { text: waiting })) {
      const morning = new Date(lastMorning(now, each.zone));
      if (each.oldest >= morning) continue;
      const wrote = await this.database
        .transaction((tx) => this.write(tx, each, morning))
        .catch((error: unknown) => {
          this.logger.error(`the letter to ${each.account} could not be written: ${String(error)}`);
          return false;
        });
      if (wrote) written += 1;
    }
    return written;
  }

  /** Of two at once the second finds nothing that waits. */
  private async write(tx: Transaction, { account, email }: Gatherer, morning: Date): Promise<boolean> {
    const gathered = await readRows(
      tx,
      Gathered,
      sql`UPDATE notice SET mailing = 'mailed' WHERE account_id = ${account}::uuid AND mailing = 'waiting'
        AND created_at < ${morning} RETURNING id, kind`,
    );
    if (gathered.length === 0) return false;
    const kinds = gathered.toSorted((a, b) => (a.id < b.id ? -1 : 1)).map(({ kind }) => kind);
    await this.outbox.enqueue(tx, { recipient: email, ...digestLetter(kinds, this.site.base) });
    return true;
  }
}
