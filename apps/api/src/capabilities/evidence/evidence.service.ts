import { Injectable } from "@nestjs/common";
import { pictureAdvice } from "@evenhand/evidence/picture-quality";
import { compiledSheet } from "@evenhand/record/report-document";
import { FileKind, PictureQuality, type PictureSize } from "@evenhand/shared/evidence";
import {
  EvidenceBeside,
  type EvidenceOfBoth,
  EvidenceOwned,
  EvidenceSeen,
  type MarksDrawn,
  type MissingPicture,
} from "@evenhand/shared/http/evidence";
import { missingPictures } from "@evenhand/sheet/asked-pictures";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { findRow, IdRow } from "../../platform/database/rows.ts";
import type { FileAnswer } from "../../platform/http/file-answer.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { Storage } from "../../platform/storage/storage.ts";
import { PictureFactsRow, withQuestions } from "./asked-of-picture.ts";
import {
  evidenceOfReport,
  evidenceOfVehicle,
  evidenceOfVersion,
  evidenceToShow,
  ownOriginal,
  ownToMove,
} from "./evidence.queries.ts";
import { copyAnswer, Original, originalAnswer } from "./file-answers.ts";
import { StoredRefusal, wordedRefusal } from "./stored-refusal.ts";

const listOf = <T extends z.ZodType>(item: T) => z.object({ body: z.object({ items: z.array(item) }) });
const facts = { facts: PictureFactsRow };
const OwnedRow = listOf(
  EvidenceOwned.omit({ questions: true }).extend({
    ...facts,
    refused: StoredRefusal.nullable(),
    quality: PictureQuality.nullable(),
  }),
);
const SeenRow = listOf(EvidenceSeen.omit({ questions: true }).extend(facts));
const BesideRow = listOf(EvidenceBeside.omit({ questions: true }).extend(facts));
const MovedRow = z.object({ drafting: z.boolean(), sealedIn: z.number().nullable() });

type OwnedFile = z.output<typeof OwnedRow>["body"]["items"][number];

const owned = ({ refused, quality, ...file }: OwnedFile): EvidenceOwned => ({
  ...withQuestions(file),
  refused: wordedRefusal(refused),
  quality: quality === null ? null : { ...quality, advice: pictureAdvice(quality) },
});

/** What is on its way counts: it was taken. */
const missingOf = (items: readonly OwnedFile[]): MissingPicture[] =>
  missingPictures(
    compiledSheet,
    items
      .filter(({ refused, removedAt }) => refused === null && removedAt === null)
      .map(({ item, kind, name }) => ({ item, isFilm: isFilm(kind, name) })),
  );

/** By what it is; while that is not known, by what it is called. */
const isFilm = (kind: FileKind | null, name: string): boolean =>
  kind === null ? /\.(mp4|mov)$/i.test(name) : kind === "mp4" || kind === "quicktime";

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
    return { items: items.map(owned), missing: missingOf(items) };
  }

  async ofVersion(actor: Actor, version: string): Promise<{ items: EvidenceSeen[] }> {
    const row = await findRow(this.database, SeenRow, {
      text: evidenceOfVersion,
      values: this.asks(actor, version),
    });
    return { items: found(row, "report").body.items.map((each) => withQuestions(each)) };
  }

  /** What both sides sealed about a car; of inspections only those for the buyer, where one is named. */
  async ofVehicle(actor: Actor, vehicle: string, buyer: string | null = null): Promise<EvidenceOfBoth> {
    const row = await findRow(this.database, BesideRow, {
      text: evidenceOfVehicle,
      values: [...this.asks(actor, vehicle), buyer],
    });
    return { items: found(row, "vehicle").body.items.map((each) => withQuestions(each)) };
  }

  /** A copy without metadata. */
  async picture(actor: Actor, id: string, size: PictureSize): Promise<FileAnswer> {
    const row = await findRow(this.database, IdRow, { text: evidenceToShow, values: this.asks(actor, id) });
    return copyAnswer(this.storage, { file: found(row, "picture").id, size, name: id });
  }

  /** The bytes that were sent, with all that the camera wrote: to its owner alone. */
  async original(actor: Actor, id: string): Promise<FileAnswer> {
    const row = await findRow(this.database, Original, {
      text: ownOriginal,
      values: [actor.organizations(), id],
    });
    return originalAnswer(this.storage, { ...found(row, "file"), name: id });
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
