import { Injectable } from "@nestjs/common";
import { type FileRefused, refusalWords } from "@evenhand/evidence/refusal-words";
import { sniffFile } from "@evenhand/evidence/sniff-file";
import type { FileKind, PictureSize } from "@evenhand/shared/evidence";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { FileAnswer } from "../../platform/http/file-answer.ts";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { Storage } from "../../platform/storage/storage.ts";
import { copyKey, originalKey } from "./keys.ts";
import { isPicture, type KeptFile, KeptFiles } from "./kept-files.ts";
import { typeOfFile } from "./types-of-files.ts";

type Original = { readonly organization: string; readonly sha256: string; readonly kind: FileKind };

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
    const sha256 = sha256Hex(bytes);
    const known = await this.files.find(this.database, organization, sha256);
    const file = known ?? (await this.files.keep(this.database, organization, sha256, bytes));
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
    const sha256 = sha256Hex(bytes);
    const known = await this.files.find(tx, organization, sha256);
    const file = known ?? (await this.files.keep(tx, organization, sha256, bytes));
    await this.files.prepare(tx, file);
    return file;
  }

  /** A copy without metadata. @throws ProblemError `not-found` until there is one */
  async copy(file: string, size: PictureSize): Promise<FileAnswer> {
    const bytes = found(await this.storage.read(copyKey(file, size)), "picture");
    return FileAnswer.shut({ name: `${file}-${size}.webp`, type: "image/webp", bytes });
  }

  /** The bytes that were sent. */
  async original({ organization, sha256, kind }: Original): Promise<FileAnswer> {
    const bytes = found(await this.storage.read(originalKey(organization, sha256)), "file");
    return FileAnswer.shut({ name: `${sha256}.${kind}`, type: typeOfFile[kind], bytes, kept: true });
  }
}
