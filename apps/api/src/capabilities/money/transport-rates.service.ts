import { Injectable } from "@nestjs/common";
import type { TransportRatesSeen } from "@evenhand/shared/http/money";
import { TransportRates } from "@evenhand/shared/landed-cost";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { nextRevision } from "../../platform/database/next-revision.ts";
import { found } from "../../platform/problems/problem-error.ts";

const ownerOf = (actor: Actor): string => found(actor.organizations("buyer")[0], "table of transport rates");

/** What a buyer reckons that transport costs: the buyer's alone. */
@Injectable()
export class TransportRatesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  async get(actor: Actor): Promise<TransportRatesSeen> {
    return this.database.transaction((tx) => this.read(tx, ownerOf(actor)));
  }

  async put(actor: Actor, meant: number, rates: TransportRates): Promise<TransportRatesSeen> {
    return this.database.transaction(async (tx) => {
      const organizationId = ownerOf(actor);
      const revision = await nextRevision(tx, organizationId, meant, () => this.read(tx, organizationId));
      const savedAt = this.clock.now();
      await tx.transportRatesVersion.create({
        data: { organizationId, revision, document: rates, savedBy: actor.account, savedAt },
      });
      return { revision, savedAt: savedAt.toISOString(), rates };
    });
  }

  async read(tx: Transaction, organizationId: string): Promise<TransportRatesSeen> {
    const row = await tx.transportRatesVersion.findFirst({
      where: { organizationId },
      orderBy: { revision: "desc" },
    });
    return row === null
      ? { revision: 0, savedAt: null, rates: null }
      : {
          revision: row.revision,
          savedAt: row.savedAt.toISOString(),
          rates: TransportRates.parse(row.document),
        };
  }
}
