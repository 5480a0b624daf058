import { Injectable } from "@nestjs/common";
import type { SheetRequest, SpokenRequest } from "@evenhand/shared/http/readings";
import type { Actor } from "../../platform/auth/actor.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { ReportsService } from "../reports/index.ts";
import type { DraftRead } from "./draft-read.ts";
import { ReadingThread } from "./reading-thread.ts";
import { SheetLinesService } from "./sheet-lines.service.ts";

/**
 * What somebody already has (captions of a recording, a sheet of their own), read for a draft of theirs. Nothing is written: what they
 * accept of it they write themselves, operation by operation, as if it had been typed.
 */
@Injectable()
export class ReadingsService {
  constructor(
    private readonly reports: ReportsService,
    private readonly lines: SheetLinesService,
    private readonly thread: ReadingThread,
  ) {}

  async spoken(actor: Actor, report: string, { text }: SpokenRequest): Promise<JsonText> {
    const { draft } = await this.draft(actor, report);
    return new JsonText(await this.thread.read({ is: "spoken", text, draft }));
  }

  async sheet(actor: Actor, report: string, { file }: SheetRequest): Promise<JsonText> {
    const { draft, firm } = await this.draft(actor, report);
    const settled = await this.lines.ofFirm(firm);
    return new JsonText(
      await this.thread.read({ is: "sheet", bytes: Buffer.from(file, "base64"), draft, settled }),
    );
  }

  private async draft(actor: Actor, id: string): Promise<{ draft: DraftRead; firm: string }> {
    const { kind, vehicle, header, organizationId } = await this.reports.draft(actor, id);
    return { draft: { kind, vehicle, header }, firm: organizationId };
  }
}
