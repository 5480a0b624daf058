import type { Readable } from "node:stream";
import { endOf } from "@evenhand/case/settlement";
import { EvidenceState, type PictureSize } from "@evenhand/shared/evidence";
import type { ReleasePicture } from "@evenhand/shared/http/releases";
import { SettlementState } from "@evenhand/shared/settlement";
import { Injectable } from "@nestjs/common";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { findRow, readRows } from "../../platform/database/rows.ts";
import type { FileAnswer } from "../../platform/http/file-answer.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import {
  KeptPicture,
  PictureFiles,
  readPhotograph,
  StoredRefusal,
  wordedRefusal,
} from "../evidence/index.ts";
import { releasePicture, waitingPictures } from "./release-pictures.queries.ts";
import { maySeeRelease } from "./releases.queries.ts";

/** Most photographs that wait at one line to be named, as many as one move takes. */
const MOST_WAITING = 10;

const WaitingRow = z.object({
  id: z.string(),
  sha256: z.string(),
  bytes: z.number(),
  state: EvidenceState,
  refused: StoredRefusal.nullable(),
  receivedAt: z.string(),
});
const FileRow = KeptPicture.extend({ own: z.boolean() });
const LineRow = z.object({
  state: SettlementState,
  buyer: z.string(),
  dealer: z.string(),
  inspector: z.string(),
});
const lineSeen = `SELECT r.state, r.buyer_id AS buyer, r.dealer_id AS dealer, r.inspector_id AS inspector FROM release r
  WHERE r.id = $2 AND ${maySeeRelease("r")}`;

const seen = ({ refused, ...row }: z.infer<typeof WaitingRow>): ReleasePicture => ({
  ...row,
  refused: wordedRefusal(refused),
});

/** Photographs that speak for a move: their sender's alone until it names them. */
@Injectable()
export class ReleasePicturesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly files: PictureFiles,
  ) {}

  /**
   * Keeps a photograph with a line. The same bytes are the same photograph, however often they are sent.
   *
   * @throws ProblemError `picture-refused`, `evidence-full`, `release-state` where the line is settled
   */
  async add(actor: Actor, release: string, body: Readable): Promise<ReleasePicture> {
    // Not a byte is read for whoever has no part in the line, nor for one that is settled.
    const organization = await this.sender(actor, release);
    const file = await this.files.keep(organization, await readPhotograph(body));
    return this.database.transaction(async (tx) => {
      const id = await this.place(tx, { release, organization, account: actor.account, file: file.id });
      await this.files.prepareLater(tx, file);
      return found(
        (await this.waiting(actor, release, tx)).find((each) => each.id === id) ?? null,
        "picture",
      );
    });
  }

  /** The same for what comes from this machine, ready at once, within a transaction. */
  async addIn(
    tx: Transaction,
    by: { readonly organization: string; readonly account: string },
    release: string,
    bytes: Buffer,
  ): Promise<{ id: string; sha256: string }> {
    const { id: file, sha256 } = await this.files.prepareNow(tx, by.organization, bytes);
    return { id: await this.place(tx, { release, ...by, file }), sha256 };
  }

  /** What the person sent to a line and no move names yet. */
  async list(actor: Actor, release: string): Promise<{ items: ReleasePicture[] }> {
    await this.sender(actor, release);
    return { items: await this.waiting(actor, release) };
  }

  async copy(actor: Actor, id: string, size: PictureSize): Promise<FileAnswer> {
    const { file } = await this.find(actor, id);
    return this.files.copy(file, size);
  }

  /** The bytes that were sent, with all that the camera wrote: their sender's. */
  async original(actor: Actor, id: string): Promise<FileAnswer> {
    const row = await this.find(actor, id);
    return this.files.original(found(row.own ? row : null, "picture"));
  }

  /** Takes away what no move names. */
  async remove(actor: Actor, id: string): Promise<void> {
    const where = { id, organizationId: { in: [...actor.organizations()] } };
    await this.database.transaction(async (tx) => {
      const picture = found(
        await tx.releasePicture.findFirst({ where, select: { sentAt: true } }),
        "picture",
      );
      if (picture.sentAt !== null)
        throw new ProblemError("release-state", "It was sent with an answer, and stays with it.");
      await tx.releasePicture.deleteMany({ where: { ...where, sentAt: null } });
    });
  }

  /** For which of their organizations somebody takes part in a line that is not settled. */
  private async sender(actor: Actor, release: string): Promise<string> {
    const values = [actor.organizations(), release];
    const line = found(await findRow(this.database, LineRow, { text: lineSeen, values }), "released item");
    if (endOf(line.state) !== null)
      throw new ProblemError("release-state", `It is ${line.state}: nothing is added to it any more.`);
    const side = (["dealer", "buyer", "inspector"] as const).find((each) =>
      actor.organizations(each).includes(line[each]),
    );
    return found(side === undefined ? null : line[side], "released item");
  }

  private async waiting(actor: Actor, release: string, on: Database | Transaction = this.database) {
    const values = [actor.organizations(), release];
    return (await readRows(on, WaitingRow, { text: waitingPictures, values })).map(seen);
  }

  private async find(actor: Actor, id: string): Promise<z.infer<typeof FileRow>> {
    const values = [actor.organizations(), id];
    return found(
      await findRow(this.database, FileRow, { name: "release-picture", text: releasePicture, values }),
      "picture",
    );
  }

  private async place(
    tx: Transaction,
    sent: {
      readonly release: string;
      readonly organization: string;
      readonly account: string;
      readonly file: string;
    },
  ): Promise<string> {
    const at = { releaseId: sent.release, organizationId: sent.organization };
    const here = await tx.releasePicture.findMany({
      where: { ...at, sentAt: null },
      select: { id: true, fileId: true },
    });
    const same = here.find((each) => each.fileId === sent.file);
    if (same !== undefined) return same.id;
    if (here.length >= MOST_WAITING)
      throw new ProblemError(
        "evidence-full",
        `One answer takes ${MOST_WAITING} photographs. Take one away, or send what is here first.`,
      );
    const id = this.ids.next();
    const { account: accountId, file: fileId } = sent;
    await tx.releasePicture.create({ data: { id, ...at, accountId, fileId, createdAt: this.clock.now() } });
    return id;
  }
}
