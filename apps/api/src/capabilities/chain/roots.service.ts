import { Injectable, type OnModuleInit } from "@nestjs/common";
import { letter } from "@evenhand/wording/letter";
import { z } from "zod";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { IdRow, readRows } from "../../platform/database/rows.ts";
import { SiteAddress } from "../../platform/http/site-address.ts";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { Outbox } from "../../platform/mail/outbox.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { administrators, grownRecords } from "./chain.queries.ts";

const AddressRow = z.object({ email: z.string() });

/** Every night, how far each record has come is signed and mailed to those whose record it is, out of the service's own reach. */
@Injectable()
export class RootsService implements OnModuleInit {
  constructor(
    private readonly database: Database,
    private readonly jobs: Jobs,
    private readonly record: RecordChain,
    private readonly outbox: Outbox,
    private readonly site: SiteAddress,
  ) {}

  onModuleInit(): void {
    this.jobs.register("record-roots", () => this.signAll());
  }

  /** Each record by itself: one that fails is tried again with the job, and those before it stand. */
  async signAll(): Promise<void> {
    const grown = await readRows(this.database, IdRow, { text: grownRecords });
    for (const { id } of grown) await this.database.transaction((tx) => this.sign(tx, id));
  }

  private async sign(tx: Transaction, organization: string): Promise<void> {
    const root = await this.record.signRoot(tx, organization);
    if (root === null) return;
    const to = await readRows(tx, AddressRow, { text: administrators, values: [organization] });
    const values = { size: root.size, root: JSON.stringify(root), address: this.site.base };
    for (const { email } of to)
      await this.outbox.enqueue(tx, { recipient: email, ...letter("record-root", values) });
  }
}
