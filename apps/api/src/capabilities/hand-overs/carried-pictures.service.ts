import type { Readable } from "node:stream";
import { filesFull, MOST_FILES } from "@evenhand/evidence/evidence-limits";
import type { CarriedPictureQuery, HandOverPicture } from "@evenhand/shared/http/hand-overs";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { Injectable } from "@nestjs/common";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import type { FileAnswer } from "../../platform/http/file-answer.ts";
import { found, notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { PictureFiles, readPhotograph } from "../evidence/index.ts";
import { checkStage, holdByLink, openByLink, readHeld } from "./by-link.ts";
import { pictureSeen } from "./hand-over-view.ts";
import { transportSheet } from "./hand-over-document.ts";
import type { StoredHandOver } from "./stored.ts";

/** Photographs by the carrier's link: of the report that is signed next, and of no other hand-over. They are the buyer's. */
@Injectable()
export class CarriedPicturesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly files: PictureFiles,
  ) {}

  /**
   * Takes a photograph at a place. The same bytes at the same place are the same photograph, however often they are sent.
   *
   * @throws ProblemError `picture-refused`, `evidence-full`, `hand-over-state` where that report is signed meanwhile
   */
  async add(secret: string, at: CarriedPictureQuery, body: Readable): Promise<HandOverPicture> {
    // Not a byte is read for whoever holds no link, and none kept for a place there is not.
    const handOver = await openByLink(this.database, secret, this.clock.now());
    checkStage(handOver, at);
    checkPlace(handOver, at);
    const bytes = await readPhotograph(body);
    const file = await this.files.keep(handOver.buyerId, bytes);
    return this.database.transaction(async (tx) => {
      const id = await this.place(tx, secret, at, file.id);
      await this.files.prepareLater(tx, file);
      return found((await pictures(tx, handOver.id)).find((each) => each.id === id) ?? null, "picture");
    });
  }

  /** The same for what comes from this machine, ready at once, within a transaction. */
  async addIn(tx: Transaction, secret: string, at: CarriedPictureQuery, bytes: Buffer): Promise<void> {
    const { buyerId } = await holdByLink(tx, secret, this.clock.now());
    const file = await this.files.prepareNow(tx, buyerId, bytes);
    await this.place(tx, secret, at, file.id);
  }

  /** One that came by this link, of either report. */
  async picture(secret: string, id: string): Promise<FileAnswer> {
    const { pictures: all } = await openByLink(this.database, secret, this.clock.now());
    const picture = found(all.find((each) => each.id === id && each.state === "ready") ?? null, "picture");
    return this.files.copy(picture.file, "medium");
  }

  /** Takes away what is not signed yet. */
  async remove(secret: string, id: string): Promise<void> {
    await this.database.transaction(async (tx) => {
      const handOver = await holdByLink(tx, secret, this.clock.now());
      const picture = handOver.pictures.find((each) => each.id === id);
      if (picture === undefined) throw notFound("picture");
      checkStage(handOver, picture);
      await tx.handOverPicture.delete({ where: { id } });
    });
  }

  /** Puts a kept file at its place; gives the photograph's id, which is the one that was there where it was. */
  private async place(
    tx: Transaction,
    secret: string,
    at: CarriedPictureQuery,
    fileId: string,
  ): Promise<string> {
    const now = this.clock.now();
    const handOver = await holdByLink(tx, secret, now);
    checkStage(handOver, at);
    const { stage, item, position } = at;
    const of = handOver.pictures.filter((each) => each.stage === stage);
    const here = of.filter((each) => each.item === item && each.position === position);
    const same = here.find((each) => each.file === fileId);
    if (same !== undefined) return same.id;
    checkRoom({ report: of.length, place: here.length });
    const id = this.ids.next();
    await tx.handOverPicture.create({
      data: { id, handOverId: handOver.id, stage, item, position, fileId, createdAt: now },
    });
    return id;
  }
}

const pictures = async (tx: Transaction, id: string): Promise<HandOverPicture[]> =>
  (await readHeld(tx, id)).pictures.map(pictureSeen);

function checkPlace({ vehicle }: StoredHandOver, { item, position }: CarriedPictureQuery): void {
  const whole = item === "" && position === "";
  const places = applicablePlaces(transportSheet.sheet, vehicle.form);
  if (whole || places.some((each) => each.item.id === item && each.position === position)) return;
  throw new ProblemError("invalid-fields", "Some of what was sent does not hold; each field is named.", {
    problems: [
      { at: "query/position", reason: "a place of the transport sheet, or no item for the whole car" },
    ],
  });
}

function checkRoom(there: { readonly report: number; readonly place: number }): void {
  const full = filesFull("carrier", there);
  if (full === null) return;
  throw new ProblemError(
    "evidence-full",
    full === "place"
      ? `One place takes ${MOST_FILES.carrier.place} photographs. Take one away, or put this one at another place.`
      : `One report takes ${MOST_FILES.carrier.report} photographs. Take some away first.`,
  );
}
