import { Injectable } from "@nestjs/common";
import { filesFull, MOST_BYTES_OF_ANY, MOST_FILES } from "@evenhand/evidence/evidence-limits";
import { compiledSheet } from "@evenhand/record/report-document";
import { EvidenceState } from "@evenhand/shared/evidence";
import type { UploadAnnounced, UploadProgress } from "@evenhand/shared/http/evidence";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { findRow } from "../../platform/database/rows.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { StoredRefusal, wordedRefusal } from "./stored-refusal.ts";
import { fileByHash, filesThere, ownUpload, reportToAddTo, sameFileThere } from "./uploads.queries.ts";

/** How long what is abandoned is waited for. */
const days = 7;

const ReportRow = z.object({
  id: z.string(),
  organizationId: z.string(),
  kind: z.string(),
  drafting: z.boolean(),
});
const FileRow = z.object({ id: z.string(), bytes: z.number() });
const CountRow = z.object({ report: z.number(), place: z.number() });
const UploadRow = z.object({
  id: z.string(),
  bytes: z.number(),
  received: z.number(),
  state: EvidenceState,
  refused: StoredRefusal.nullable(),
});

const wrong = (at: string, reason: string) =>
  new ProblemError(
    "invalid-fields",
    "Some of what was said of the file does not hold; each field is named.",
    {
      problems: [{ at, reason }],
    },
  );

/** Files on their way to a report. */
@Injectable()
export class UploadsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
  ) {}

  /**
   * Announces a file at a place of a report. The same file at the same place is the same upload, however often it is announced; a file
   * that the organization has already need not be sent again.
   *
   * @returns where its bytes go
   */
  async announce(actor: Actor, report: string, file: UploadAnnounced): Promise<string> {
    return this.database.transaction((tx) => this.announceIn(tx, actor, report, file));
  }

  /** The same as a part of what is done in `tx`. */
  async announceIn(tx: Transaction, actor: Actor, report: string, file: UploadAnnounced): Promise<string> {
    checkAnnounced(file);
    const row = found(
      await findRow(tx, ReportRow, { text: reportToAddTo, values: [actor.organizations(), report] }),
      "report",
    );
    const place = [row.id, file.item, file.position];
    const there = await findRow(tx, FileRow, { text: sameFileThere, values: [...place, file.sha256] });
    if (there !== null) return sameUpload(there, file);
    await this.checkRoom(tx, row, place);
    return this.begin(tx, actor, row, file);
  }

  /** One's own upload. @throws ProblemError `not-found` */
  async get(actor: Actor, id: string): Promise<UploadProgress> {
    const row = await findRow(this.database, UploadRow, {
      text: ownUpload,
      values: [actor.organizations(), id],
    });
    const { refused, ...upload } = found(row, "upload");
    return { ...upload, refused: wordedRefusal(refused) };
  }

  private async checkRoom(
    tx: Transaction,
    { kind, drafting }: z.infer<typeof ReportRow>,
    place: readonly string[],
  ): Promise<void> {
    if (!drafting)
      throw new ProblemError(
        "report-sealed",
        "The report is sealed and stays as it is. Begin a new version to add a file.",
      );
    const there = await findRow(tx, CountRow, { text: filesThere, values: place });
    const author = kind === "inspection" ? "inspector" : "dealer";
    const full = filesFull(author, there ?? { report: 0, place: 0 });
    if (full === null) return;
    throw new ProblemError(
      "evidence-full",
      full === "place"
        ? `One place takes ${MOST_FILES[author].place} files. Take one away, or put this one at another place.`
        : `One report takes ${MOST_FILES[author].report} files. Take some away first.`,
    );
  }

  private async begin(
    tx: Transaction,
    { account }: Actor,
    report: z.infer<typeof ReportRow>,
    file: UploadAnnounced,
  ): Promise<string> {
    const [id, now] = [this.ids.next(), this.clock.now()];
    const known = await findRow(tx, FileRow, {
      text: fileByHash,
      values: [report.organizationId, file.sha256],
    });
    if (known !== null) sameUpload(known, file);
    await tx.evidence.create({
      data: {
        id,
        reportId: report.id,
        organizationId: report.organizationId,
        accountId: account,
        item: file.item,
        position: file.position,
        caption: file.caption ?? null,
        name: file.filename,
        sha256: file.sha256,
        bytes: file.length,
        received: known === null ? 0 : file.length,
        state: known === null ? "arriving" : "pending",
        fileId: known?.id ?? null,
        createdAt: now,
        expiresAt: new Date(now.getTime() + days * 86_400_000),
      },
    });
    return id;
  }
}

function checkAnnounced({ item, length }: UploadAnnounced): void {
  if (length > MOST_BYTES_OF_ANY)
    throw wrong("header/upload-length", `at most ${MOST_BYTES_OF_ANY / 1024 / 1024} MiB; send it smaller`);
  if (item !== "" && !compiledSheet.items.has(item)) throw wrong("/item", "an item of the sheet, or none");
}

function sameUpload({ id, bytes }: { id: string; bytes: number }, { length }: UploadAnnounced): string {
  if (bytes === length) return id;
  throw wrong("header/upload-length", `the file of this SHA-256 has ${bytes} bytes`);
}
