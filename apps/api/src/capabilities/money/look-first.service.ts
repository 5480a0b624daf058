import { analyze } from "@evenhand/comparison/analyze";
import { lookFirst, type LookFirstInput, PUT_FIRST } from "@evenhand/decision/look-first";
import { compiledSheet as sheet } from "@evenhand/record/report-document";
import type { LookFirst } from "@evenhand/shared/http/money";
import { Injectable } from "@nestjs/common";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { findRow } from "../../platform/database/rows.ts";
import { storedReport } from "../../platform/database/stored-documents.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { ComparisonsService } from "../comparisons/index.ts";
import { CostTablesService } from "../summaries/index.ts";
import { known, KnownRow } from "./look-first.queries.ts";

type Known = Pick<LookFirstInput, "comparison" | "found">;

/** Where a visit would begin, by what is known: the buyer's alone. The inspector sees only what is in the brief. */
@Injectable()
export class LookFirstService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly comparisons: ComparisonsService,
    private readonly costTables: CostTablesService,
  ) {}

  async get(actor: Actor, vehicle: string): Promise<LookFirst> {
    const buyer = found(actor.organizations("buyer")[0], "car");
    return this.database.transaction(async (tx) => {
      const values = [actor.organizations(), vehicle, buyer, actor.account, this.clock.now()];
      const row = found(await findRow(tx, KnownRow, { text: known, values }), "car");
      const by = await this.knownBy(tx, actor, row);
      if (by === null) return { from: "nothing", priced: false, looks: [] };
      const { table } = await this.costTables.read(tx, buyer);
      const looks = lookFirst({
        ...by,
        sheet: sheet.sheet,
        table,
        left: 0,
        again: new Set(row.again),
      });
      return {
        from: row.comparison === null ? "statement" : "comparison",
        priced: table !== null,
        // Of what it was agreed to look at again nothing is left out, however much that is.
        looks: looks.filter(({ again }, at) => again || at < PUT_FIRST),
      };
    });
  }

  /** What was found; before any visit the statement alone, set against an inspection that saw nothing. */
  private async knownBy(
    tx: Transaction,
    actor: Actor,
    { comparison, statement }: KnownRow,
  ): Promise<Known | null> {
    if (comparison !== null) {
      const ordered = await this.comparisons.readOrdered(tx, actor, comparison);
      return { comparison: ordered.comparison, found: ordered.b };
    }
    if (statement === null) return null;
    const said = storedReport(statement);
    const nobody = { ...said, kind: "inspection" as const, findings: [], instruments: [] };
    return { comparison: analyze(said, nobody, sheet), found: nobody };
  }
}
