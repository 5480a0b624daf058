import { Injectable } from "@nestjs/common";
import type { SettledLine, SettledLines } from "@evenhand/shared/http/readings";
import type { FieldProblem } from "@evenhand/shared/problem";
import { compiledSheet, currentSheet } from "@evenhand/record/report-document";
import type { SettledLine as Settled } from "@evenhand/tables/read-table";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { oneAtATime } from "../../platform/database/bounds.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { readRows, run, sql } from "../../platform/database/rows.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { ReportsService } from "../reports/index.ts";

/** Lines of a firm's sheets that are kept: a dozen sheets of four hundred lines each. */
const MOST_LINES = 5_000;

const LineRow = z.object({ line: z.string(), item: z.string(), positions: z.array(z.string()) });

const isPlace = (item: string, position: string): boolean => {
  const set = compiledSheet.items.get(item)?.item.positions;
  if (set === undefined) return position === "";
  const { positions = [], numbered } = currentSheet.positionSets.find(({ id }) => id === set) ?? {};
  return (
    positions.some(({ id }) => id === position) ||
    (numbered !== undefined && new RegExp(`^${numbered.prefix}-[1-9][0-9]?$`).test(position))
  );
};

const problemsOf = (line: SettledLine, at: number): FieldProblem[] => {
  if (line.item === null) return [];
  const { item, positions } = line;
  if (!compiledSheet.items.has(item))
    return [{ at: `/lines/${at}/item`, reason: "The sheet has no such item.", item }];
  return positions.flatMap((position, index) =>
    isPlace(item, position)
      ? []
      : [{ at: `/lines/${at}/positions/${index}`, reason: "The item has no such place.", item, position }],
  );
};

/** What the lines of a firm's own sheets were settled to be, so that nobody settles the same line twice. */
@Injectable()
export class SheetLinesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly reports: ReportsService,
  ) {}

  async ofFirm(firm: string): Promise<ReadonlyMap<string, Settled>> {
    const rows = await readRows(
      this.database,
      LineRow,
      sql`SELECT line, item, positions FROM sheet_line WHERE organization_id = ${firm}::uuid`,
    );
    return new Map(rows.map(({ line, ...settled }) => [line, settled]));
  }

  /** @throws ProblemError `invalid-fields` naming what is on no sheet */
  async settle(actor: Actor, report: string, { lines }: SettledLines): Promise<void> {
    const problems = lines.flatMap(problemsOf);
    if (problems.length > 0)
      throw new ProblemError("invalid-fields", "Some lines cannot be settled so; each is named.", {
        problems,
      });
    const { organizationId: firm } = await this.reports.draft(actor, report);
    await this.database.transaction(async (tx) => {
      await oneAtATime(tx, "sheet-lines", firm);
      await forget(tx, firm, lines);
      await keep(tx, { firm, account: actor.account, now: this.clock.now() }, lines);
      await makeRoom(tx, firm);
    });
  }
}

const forget = (tx: Transaction, firm: string, lines: readonly SettledLine[]) =>
  run(
    tx,
    sql`DELETE FROM sheet_line WHERE organization_id = ${firm}::uuid AND line = ANY(${lines.map(({ line }) => line)}::text[])`,
  );

const keep = (
  tx: Transaction,
  { firm, account, now }: { firm: string; account: string; now: Date },
  lines: readonly SettledLine[],
) => {
  // The last word on a line counts.
  const kept = [...new Map(lines.map((line) => [line.line, line])).values()].filter(
    ({ item }) => item !== null,
  );
  return run(
    tx,
    sql`INSERT INTO sheet_line (organization_id, line, item, positions, updated_by, updated_at)
      SELECT ${firm}::uuid, l.line, l.item, l.positions, ${account}::uuid, ${now}
      FROM jsonb_to_recordset(${JSON.stringify(kept)}::jsonb) AS l (line text, item text, positions text[])`,
  );
};

const makeRoom = (tx: Transaction, firm: string) =>
  run(
    tx,
    sql`DELETE FROM sheet_line WHERE organization_id = ${firm}::uuid AND line IN (
      SELECT line FROM sheet_line WHERE organization_id = ${firm}::uuid
      ORDER BY updated_at DESC, line OFFSET ${MOST_LINES})`,
  );
