import { Injectable } from "@nestjs/common";
import { FirmInstruments, type FirmInstrumentsSeen } from "@evenhand/shared/http/instruments";
import type { Instrument } from "@evenhand/shared/report";
import { firmInstrumentProblems, instrumentsInUse } from "@evenhand/sheet/firm-instruments";
import { instrumentKinds } from "@evenhand/sheet/instrument-kinds";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { type FirmDocument, FirmDocuments } from "../../platform/database/firm-documents.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const kinds = instrumentKinds(sheetVersion1);

const list: FirmDocument<FirmInstruments> = {
  table: "firm_instruments",
  contract: FirmInstruments,
  none: { instruments: [] },
  refuse: (instruments) => {
    const problems = firmInstrumentProblems(instruments, kinds);
    if (problems.length === 0) return;
    throw new ProblemError("invalid-fields", "Some instruments cannot be taken; each is named.", {
      problems,
    });
  },
};

/** What a firm measures with. A report takes a copy when it is begun, so that a later change moves no report. */
@Injectable()
export class FirmInstrumentsService {
  constructor(private readonly documents: FirmDocuments) {}

  async get(actor: Actor, firm: string): Promise<FirmInstrumentsSeen> {
    const { revision, document } = await this.documents.get(actor, firm, list);
    return { revision, ...document };
  }

  /** Kept by the firm's administrators; reports begun before keep the instruments they were begun with. */
  async put(
    actor: Actor,
    firm: string,
    meant: number,
    instruments: FirmInstruments,
  ): Promise<FirmInstrumentsSeen> {
    const { revision } = await this.documents.put(actor, firm, meant, list, instruments);
    return { revision, ...instruments };
  }

  /** What a firm's new report is begun with. */
  async forReport(tx: Transaction, firm: string): Promise<Instrument[]> {
    return instrumentsInUse((await this.documents.read(tx, firm, list)).document);
  }
}
