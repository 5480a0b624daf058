import { Injectable } from "@nestjs/common";
import { FileKind, type PictureSize } from "@evenhand/shared/evidence";
import { EvidenceOwned, type MissingPicture, type MarksDrawn } from "@evenhand/shared/http/evidence";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { BodyRow, findRow, IdRow } from "../../platform/database/rows.ts";
import { FileAnswer } from "../../platform/http/file-answer.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { Storage } from "../../platform/storage/storage.ts";
import {
  evidenceOfReport,
  evidenceOfVehicle,
  evidenceOfVersion,
  evidenceToShow,
  ownOriginal,
  ownToMove,
} from "./evidence.queries.ts";
import { copyKey, originalKey } from "./keys.ts";
import { StoredRefusal, wordedRefusal } from "./stored-refusal.ts";

const OwnedRow = z.object({
  body: z.object({ items: z.array(EvidenceOwned.extend({ refused: StoredRefusal.nullable() })) }),
});
const OriginalRow = z.object({ organization: z.string(), sha256: z.string(), kind: FileKind });
const MovedRow = z.object({ drafting: z.boolean(), sealedIn: z.number().nullable() });

const types: Readonly<Record<FileKind, string>> = {
  jpeg: "image/jpeg",
  png: "image/png",
  webp: "image/webp",
  avif: "image/avif",
  pdf: "application/pdf",
  mp4: "video/mp4",
  quicktime: "video/quicktime",
};

/** Files at their places: who sees which, in which form. */
@Injectable()
export class EvidenceService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly storage: Storage,
  ) {}

  async ofReport(
    actor: Actor,
    report: string,
  ): Promise<{ items: EvidenceOwned[]; missing: MissingPicture[] }> {
    const row = await findRow(this.database, OwnedRow, {
      text: evidenceOfReport,
      values: this.asks(actor, report),
    });
    const { items } = found(row, "report").body;
    return {
      items: items.map(({ refused, ...each }) => ({ ...each, refused: wordedRefusal(refused) })),
      missing: [],
    };
  }

  async ofVersion(actor: Actor, version: string): Promise<JsonText> {
    const row = await findRow(this.database, BodyRow, {
      text: evidenceOfVersion,
      values: this.asks(actor, version),
    });
    return new JsonText(found(row, "report").body);
  }

  /** What both sides sealed about a car; of inspections only those for the buyer, where one is named. */
  async ofVehicle(actor: Actor, vehicle: string, buyer: string | null = null): Promise<JsonText> {
    const row = await findRow(this.database, BodyRow, {
      text: evidenceOfVehicle,
      values: [...this.asks(actor, vehicle), buyer],
    });
    return new JsonText(found(row, "vehicle").body);
  }

  /** A copy without metadata. */
  async picture(actor: Actor, id: string, size: PictureSize): Promise<FileAnswer> {
    const row = await findRow(this.database, IdRow, { text: evidenceToShow, values: this.asks(actor, id) });
    const bytes = await this.storage.read(copyKey(found(row, "picture").id, size));
    return FileAnswer.shut({
      name: `${id}-${size}.webp`,
      type: "image/webp",
      bytes: found(bytes, "picture"),
    });
  }

  /** The bytes that were sent, with all that the camera wrote: to its owner alone. */
  async original(actor: Actor, id: string): Promise<FileAnswer> {
    const row = await findRow(this.database, OriginalRow, {
      text: ownOriginal,
      values: [actor.organizations(), id],
    });
    const { organization, sha256, kind } = found(row, "file");
    const bytes = found(await this.storage.read(originalKey(organization, sha256)), "file");
    return FileAnswer.shut({ name: `${id}.${kind}`, type: types[kind], bytes, kept: true });
  }

  /** What is drawn over a picture lies beside it: the picture stays as it is. */
  async mark(actor: Actor, id: string, { marks }: MarksDrawn): Promise<void> {
    await this.database.transaction(async (tx) => {
      await this.holdUnsealed(tx, actor, id);
      await tx.evidence.updateMany({ where: { id }, data: { marks } });
    });
  }

  /** Takes it away from its place; until the report is sealed it can be put back. */
  async remove(actor: Actor, id: string): Promise<void> {
    await this.database.transaction(async (tx) => {
      await this.holdUnsealed(tx, actor, id);
      await tx.evidence.updateMany({ where: { id, removedAt: null }, data: { removedAt: this.clock.now() } });
    });
  }

  async restore(actor: Actor, id: string): Promise<void> {
    await this.database.transaction(async (tx) => {
      await this.holdUnsealed(tx, actor, id);
      await tx.evidence.updateMany({ where: { id }, data: { removedAt: null } });
    });
  }

  private async holdUnsealed(tx: Transaction, actor: Actor, id: string): Promise<void> {
    const row = await findRow(tx, MovedRow, { text: ownToMove, values: [actor.organizations(), id] });
    const { drafting, sealedIn } = found(row, "file");
    if (drafting && sealedIn === null) return;
    throw new ProblemError(
      "report-sealed",
      sealedIn === null
        ? "The report is sealed and stays as it is. Begin a new version to change its files."
        : `The file stands in version ${sealedIn}, which is sealed, and stays.`,
    );
  }

  private asks(actor: Actor, id: string): unknown[] {
    return [actor.organizations(), id, actor.account, this.clock.now()];
  }
}
