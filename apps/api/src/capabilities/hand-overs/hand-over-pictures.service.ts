import type { PictureSize } from "@evenhand/shared/evidence";
import { Injectable } from "@nestjs/common";
import type { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Database } from "../../platform/database/database.ts";
import { findRow } from "../../platform/database/rows.ts";
import type { FileAnswer } from "../../platform/http/file-answer.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { KeptPicture, PictureFiles } from "../evidence/index.ts";
import { handOverPicture } from "./hand-overs.queries.ts";
import { whoOf } from "./who-of.ts";

/** A hand-over's photographs, as buyer and dealer may see them. */
@Injectable()
export class HandOverPicturesService {
  constructor(
    private readonly database: Database,
    private readonly files: PictureFiles,
  ) {}

  async copy(actor: Actor, id: string, size: PictureSize): Promise<FileAnswer> {
    const { file } = await this.find(actor, id);
    return this.files.copy(file, size);
  }

  /** The bytes that were sent, with all that the camera wrote. */
  async original(actor: Actor, id: string): Promise<FileAnswer> {
    return this.files.original(await this.find(actor, id));
  }

  private async find(actor: Actor, id: string): Promise<z.infer<typeof KeptPicture>> {
    const row = await findRow(this.database, KeptPicture, {
      name: "hand-over-picture",
      text: handOverPicture,
      values: [...whoOf(actor), id],
    });
    return found(row, "picture");
  }
}
