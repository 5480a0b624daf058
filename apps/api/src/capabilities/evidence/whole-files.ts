import { Injectable } from "@nestjs/common";
import type { PictureMark } from "@evenhand/shared/evidence";
import type { UploadAnnounced } from "@evenhand/shared/http/evidence";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { KeptFiles } from "./kept-files.ts";
import { UploadsService } from "./uploads.service.ts";

/** A file that is here whole already, and where it belongs. */
export type WholeFile = Pick<UploadAnnounced, "filename" | "item" | "position" | "caption"> & {
  readonly bytes: Buffer;
  readonly marks: readonly PictureMark[];
};

/** Files that come from this machine and need no upload: they go the same way from there on, within one transaction. */
@Injectable()
export class WholeFiles {
  constructor(
    private readonly files: KeptFiles,
    private readonly uploads: UploadsService,
  ) {}

  /** Puts a file at its place of a draft, ready or refused at once. @throws ProblemError as announcing an upload does */
  async add(
    tx: Transaction,
    actor: Actor,
    { organization, report }: { readonly organization: string; readonly report: string },
    { bytes, marks, ...place }: WholeFile,
  ): Promise<void> {
    const file = await this.files.keepOnce(tx, organization, bytes);
    await this.files.prepare(tx, file);
    const { sha256 } = file;
    const id = await this.uploads.announceIn(tx, actor, report, { ...place, sha256, length: bytes.length });
    await tx.evidence.updateMany({ where: { id }, data: { marks: [...marks] } });
  }
}
