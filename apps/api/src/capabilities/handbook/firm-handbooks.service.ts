import { Injectable } from "@nestjs/common";
import { firmHandbookProblems, PROBLEM_WORDS, reportHandbook } from "@evenhand/handbook/firm-handbook";
import { FirmHandbook, type ReportHandbook } from "@evenhand/shared/cross-check";
import type { FirmHandbookSeen } from "@evenhand/shared/http/handbook";
import type { Vehicle } from "@evenhand/shared/report";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { type FirmDocument, FirmDocuments } from "../../platform/database/firm-documents.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const figures: FirmDocument<FirmHandbook> = {
  table: "firm_handbook",
  contract: FirmHandbook,
  none: { limits: {}, makers: [] },
  refuse: (handbook) => {
    const problems = firmHandbookProblems(handbook);
    if (problems.length === 0) return;
    throw new ProblemError("invalid-fields", "Some figures cannot be taken; each is named.", {
      problems: problems.map(({ at, reason }) => ({ at, reason: PROBLEM_WORDS[reason] })),
    });
  },
};

/** A firm's own figures for the handbook's rules. What of them speaks of a car is sealed with each report on it. */
@Injectable()
export class FirmHandbooksService {
  constructor(private readonly documents: FirmDocuments) {}

  async get(actor: Actor, firm: string): Promise<FirmHandbookSeen> {
    const { revision, document } = await this.documents.get(actor, firm, figures);
    return { revision, handbook: document };
  }

  /** Set by the firm's administrators; reports sealed before keep what they were sealed with. */
  async put(actor: Actor, firm: string, meant: number, handbook: FirmHandbook): Promise<FirmHandbookSeen> {
    const { revision } = await this.documents.put(actor, firm, meant, figures, handbook);
    return { revision, handbook };
  }

  /** What of a firm's handbook goes into its report on this car. */
  async forReport(tx: Transaction, firm: string, vehicle: Vehicle): Promise<ReportHandbook | undefined> {
    return reportHandbook((await this.documents.read(tx, firm, figures)).document, vehicle);
  }
}
