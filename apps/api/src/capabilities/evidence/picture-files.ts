import { Injectable } from "@nestjs/common";
import { type FileRefused, refusalWords } from "@evenhand/evidence/refusal-words";
import { sniffFile } from "@evenhand/evidence/sniff-file";
import type { PictureSize } from "@evenhand/shared/evidence";
import { Database, type Transaction } from "../../platform/database/database.ts";
import type { FileAnswer } from "../../platform/http/file-answer.ts";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { Storage } from "../../platform/storage/storage.ts";
import { copyAnswer, type Original, originalAnswer } from "./file-answers.ts";
import { isPicture, type KeptFile, KeptFiles } from "./kept-files.ts";

const refused = (why: FileRefused): ProblemError => new ProblemError("picture-refused", refusalWords(why));

/** Photographs that are at no place of a report: kept, prepared and shown as all others are. */
@Injectable()
export class PictureFiles {
  constructor(
    private readonly database: Database,
    private readonly storage: Storage,
    private readonly files: KeptFiles,
    private readonly jobs: Jobs,
  ) {}

  /** Keeps it for an organization, once however often it comes. @throws ProblemError `picture-refused` with the reason in words */
  async keep(organization: string, bytes: Buffer): Promise<KeptFile> {
    const sniffed = sniffFile(bytes);
    if (!sniffed.ok) throw refused(sniffed.refused);
    if (!isPicture(sniffed.kind)) throw refused({ reason: "unknown" });
    const file = await this.files.keepOnce(this.database, organization, bytes);
    // Its bytes were read to the end before, and could not be.
    if (file.state === "refused") throw refused({ reason: "unreadable" });
    return file;
  }

  /** Has its copies made, where they are not there yet: part of what is done in `tx`. */
  async prepareLater(tx: Transaction, file: Pick<KeptFile, "id" | "state">): Promise<void> {
    if (file.state === "checked") await this.jobs.enqueue(tx, "evidence", file.id);
  }

  /** The same at once, for what comes from this machine. */
  async prepareNow(tx: Transaction, organization: string, bytes: Buffer): Promise<KeptFile> {
    const file = await this.files.keepOnce(tx, organization, bytes);
    await this.files.prepare(tx, file);
    return file;
  }

  /** A copy without metadata. @throws ProblemError `not-found` until there is one */
  async copy(file: string, size: PictureSize): Promise<FileAnswer> {
    return copyAnswer(this.storage, { file, size, name: file });
  }

  /** The bytes that were sent. */
  async original(file: Original): Promise<FileAnswer> {
    return originalAnswer(this.storage, { ...file, name: file.sha256 });
  }
}
