import { Injectable } from "@nestjs/common";
import type { QuestionAnswer } from "@evenhand/shared/http/questions";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { OperationsService, ReportsService, SealingService } from "../reports/index.ts";

export type AskedPlace = { vehicle: string; dealer: string; item: string; position: string };

/** Writes an answer into the dealer's statement: the draft that is open, or the next version, begun for it. */
@Injectable()
export class StatementAnswers {
  constructor(
    private readonly ids: Ids,
    private readonly reports: ReportsService,
    private readonly operations: OperationsService,
    private readonly sealing: SealingService,
  ) {}

  /** @returns the report, and the number of the version that will say it */
  async write(
    tx: Transaction,
    actor: Actor,
    { vehicle, dealer, item, position }: AskedPlace,
    { finding, base, seal }: QuestionAnswer,
  ): Promise<{ report: string; version: number }> {
    const report = await findStatement(tx, vehicle, dealer);
    if (!report.drafting) await this.reports.revise(tx, actor, report.id);
    const place = { reportId: report.id, item, position };
    const operation = {
      id: this.ids.next(),
      op: "set" as const,
      finding: { ...finding, item, position },
      base: report.drafting ? base : await findRevision(tx, place),
    };
    const { results, revision } = await this.operations.apply(tx, actor, report.id, {
      operations: [operation],
    });
    const [result] = results;
    if (result?.result === "refused")
      throw new ProblemError("invalid-fields", "The answer does not hold as a finding of the sheet.", {
        problems: result.problems.map((problem) => ({ ...problem, at: `/finding${problem.at}` })),
      });
    if (result?.result === "conflict")
      throw new ProblemError(
        "revision-moved",
        "Somebody changed the finding there meanwhile. Read it again.",
        {
          members: { revision: result.revision, current: result.current },
        },
      );
    const version = 1 + (await tx.reportVersion.count({ where: { reportId: report.id } }));
    if (seal) await this.sealing.seal(tx, actor, report.id, revision);
    return { report: report.id, version };
  }
}

/**
 * The revision that stands at a place of a draft that was begun just now: nobody had a draft open in which it could have been
 * seen or changed, and the next version begins with every finding of the last.
 */
async function findRevision(
  tx: Transaction,
  { reportId, item, position }: { reportId: string; item: string; position: string },
): Promise<number | null> {
  const standing = await tx.reportFinding.findUnique({
    where: { reportId_item_position: { reportId, item, position } },
    select: { revision: true },
  });
  return standing?.revision ?? null;
}

async function findStatement(
  tx: Transaction,
  vehicleId: string,
  organizationId: string,
): Promise<{ id: string; drafting: boolean }> {
  const report = await tx.report.findFirst({
    where: { vehicleId, organizationId, kind: "statement", orderId: null },
    select: { id: true, drafting: true },
  });
  if (report !== null) return report;
  throw new ProblemError(
    "nothing-to-list",
    "Begin a statement on the car first; the answer becomes part of it.",
  );
}
