import { Injectable } from "@nestjs/common";
import { FirmInstruments, type FirmInstrumentsSeen } from "@evenhand/shared/http/instruments";
import type { Instrument } from "@evenhand/shared/report";
import { firmInstrumentProblems, instrumentsInUse } from "@evenhand/sheet/firm-instruments";
import { instrumentKinds } from "@evenhand/sheet/instrument-kinds";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { nextRevision } from "../../platform/database/next-revision.ts";
import { toJson } from "../../platform/database/to-json.ts";
import { notFound, ProblemError } from "../../platform/problems/problem-error.ts";

const kinds = instrumentKinds(sheetVersion1);

/** What a firm measures with. A report takes a copy when it is begun, so that a later change moves no report. */
@Injectable()
export class FirmInstrumentsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  async get(actor: Actor, organization: string): Promise<FirmInstrumentsSeen> {
    if (!actor.worksFor(organization)) throw notFound("organization");
    return this.database.transaction((tx) => this.read(tx, organization));
  }

  /** Kept by the firm's administrators; reports begun before keep the instruments they were begun with. */
  async put(
    actor: Actor,
    organizationId: string,
    meant: number,
    list: FirmInstruments,
  ): Promise<FirmInstrumentsSeen> {
    if (!actor.worksFor(organizationId) || !actor.isAdmin(organizationId)) throw notFound("organization");
    refuseProblems(list);
    return this.database.transaction(async (tx) => {
      const revision = await nextRevision(tx, organizationId, meant, () => this.read(tx, organizationId));
      const document = toJson(list);
      const row = { revision, document, updatedBy: actor.account, updatedAt: this.clock.now() };
      await tx.firmInstruments.upsert({
        where: { organizationId },
        create: { organizationId, ...row },
        update: row,
      });
      return { revision, ...list };
    });
  }

  /** What a firm's new report is begun with. */
  async forReport(tx: Transaction, organizationId: string): Promise<Instrument[]> {
    return instrumentsInUse(await this.read(tx, organizationId));
  }

  private async read(tx: Transaction, organizationId: string): Promise<FirmInstrumentsSeen> {
    const row = await tx.firmInstruments.findUnique({ where: { organizationId } });
    return row === null
      ? { revision: 0, instruments: [] }
      : { revision: row.revision, ...FirmInstruments.parse(row.document) };
  }
}

function refuseProblems(list: FirmInstruments): void {
  const problems = firmInstrumentProblems(list, kinds);
  if (problems.length > 0)
    throw new ProblemError("invalid-fields", "Some instruments cannot be taken; each is named.", {
      problems,
    });
}
