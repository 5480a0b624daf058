import { Injectable } from "@nestjs/common";
import type { ComparisonQuery, ComparisonRequest } from "@evenhand/shared/http/comparisons";
import type { Place } from "@evenhand/record/place";
import type { Report } from "@evenhand/shared/report";
import type { Created } from "@evenhand/shared/http/paging";
import { LRUCache } from "lru-cache";
import { z } from "zod";
import { maySeeVehicle, maySeeVersion, mustBeBlind } from "../../platform/access/row-access.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import type { ReportVersion } from "../../platform/database/generated/client.ts";
import { Ids } from "../../platform/database/ids.ts";
import { DocumentCache } from "../../platform/database/document-cache.ts";
import { keptOrMade } from "../../platform/database/kept-or-made.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { BodyRow, DocumentRow, findRow } from "../../platform/database/rows.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found, notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { HistoryTables } from "../history/index.ts";
import { analyzeVersions, engine, placesToLookAgain } from "./analysis.ts";
import { countStored } from "./counting.ts";
import { type AnswerMatters, answerMatters } from "./answer-matters.ts";
import {
  lockOrdered,
  readAnswer,
  readMade,
  readOrdered,
  readOrderedOf,
  type OrderedComparison,
} from "./ordered-comparison.ts";
import {
  comparisonDetail,
  comparisonDocument,
  comparisonHashes,
  comparisonList,
} from "./comparisons.queries.ts";

const CountRow = z.object({ count: z.number() });
const Hashes = z.object({ hash: z.string(), answerHash: z.string().nullable() });

const countedAtOnce = 20;

export type Pair = { vehicle: string; a: string; b: string };

/** Answers of which the matters are kept as read: some 50 KB each. */
const maxAnswerMatters = 200;

@Injectable()
export class ComparisonsService {
  private readonly answerMatters = new LRUCache<string, AnswerMatters>({ max: maxAnswerMatters });

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly kept: DocumentCache,
    private readonly history: HistoryTables,
  ) {}

  async list(actor: Actor, query: ComparisonQuery): Promise<JsonText> {
    return readPage(this.database, {
      name: "comparison-list",
      text: comparisonList,
      values: [actor.organizations(), readCursor(query), query.limit, query.vehicle ?? null],
    });
  }

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await findRow(this.database, BodyRow, {
      name: "comparison",
      text: comparisonDetail,
      values: [actor.organizations(), id],
    });
    return new JsonText(found(row, "comparison").body);
  }

  /** The stored bytes. Whether the person may see them is asked every time. */
  async document(actor: Actor, id: string): Promise<JsonText> {
    const { hash } = await this.hashes(actor, id);
    return new JsonText(await this.kept.get(hash, () => this.loadDocument(id)), hash);
  }

  /** Page one with its matters, as it was stored with the comparison. */
  async answer(actor: Actor, id: string): Promise<JsonText> {
    const seen = await this.hashes(actor, id);
    if (seen.answerHash !== null) {
      const hash = seen.answerHash;
      return new JsonText(await this.storedAnswer(id, hash), hash);
    }
    const bytes = await this.loadAnswer(id);
    return new JsonText(bytes, sha256Hex(Buffer.from(bytes).toString("utf8")));
  }

  /**
   * The matters of a stored answer, for whoever has asked already whether it may be read.
   *
   * @param answerHash of the stored answer; `null` where none is stored yet, and then it is made and kept
   */
  async matters(id: string, answerHash: string | null): Promise<AnswerMatters> {
    if (answerHash === null) return answerMatters(await this.loadAnswer(id));
    return keptOrMade(this.answerMatters, answerHash, async () =>
      answerMatters(await this.storedAnswer(id, answerHash)),
    );
  }

  /** Sets any two sealed versions of one car against each other that the person may read. */
  async create(
    tx: Transaction,
    actor: Actor,
    vehicle: string,
    { a, b }: ComparisonRequest,
  ): Promise<Created> {
    if (!(await this.mayRead(tx, actor, { vehicle, a, b }))) throw notFound("pair of reports on this car");
    if (a === b) throw new ProblemError("not-comparable", "Name two different reports.");
    return { id: await this.make(tx, { vehicle, a, b }) };
  }

  /** The stored comparison of the two by this engine, made now where there is none. */
  async make(tx: Transaction, { vehicle, a, b }: Pair): Promise<string> {
    const there = await tx.comparison.findUnique({
      where: { aId_bId_engine: { aId: a, bId: b, engine } },
      select: { id: true },
    });
    if (there !== null) return there.id;
    const versions = await tx.reportVersion.findMany({ where: { id: { in: [a, b] } } });
    const [first, second] = [a, b].map((id) => versions.find((each) => each.id === id));
    const analysis = await this.analyze(tx, found(first, "report"), found(second, "report"));
    const id = this.ids.next();
    await tx.comparison.create({
      data: { id, vehicleId: vehicle, aId: a, bId: b, engine, ...analysis, createdAt: this.clock.now() },
    });
    return id;
  }

  /** Where whoever wrote an inspection is to look again before sealing it, told from the statement it was ordered on. */
  async lookAgain(tx: Transaction, statement: string, inspection: Report, report: string): Promise<Place[]> {
    const version = await tx.reportVersion.findUnique({ where: { id: statement } });
    return placesToLookAgain(found(version ?? undefined, "report"), inspection, report);
  }

  /** A comparison with an inspection that the person's organization ordered, held until the transaction ends. */
  async lockOrdered(tx: Transaction, actor: Actor, id: string): Promise<OrderedComparison> {
    return lockOrdered(tx, actor, id);
  }

  /** The same to look at, holding nothing. */
  async readOrdered(tx: Transaction, actor: Actor, id: string): Promise<OrderedComparison> {
    return readOrdered(tx, actor, id);
  }

  /** Of the same only whose it is and of which car. */
  async readOrderedOf(tx: Transaction, actor: Actor, id: string): ReturnType<typeof readOrderedOf> {
    return readOrderedOf(tx, actor, id);
  }

  /** One that was just made, whoever may read it. */
  async readMade(tx: Transaction, id: string): Promise<OrderedComparison> {
    return readMade(tx, id);
  }

  /** Counts what has not been counted, from what is stored, and keeps it: some in each transaction, so that none takes long. */
  async count(comparisons: readonly string[]): Promise<void> {
    for (let at = 0; at < comparisons.length; at += countedAtOnce) {
      const some = comparisons.slice(at, at + countedAtOnce);
      await this.database.transaction((tx) => countStored(tx, some));
    }
  }

  /** With what past pairs tell today of the inspectors: a comparison that is there already stays what it is. */
  private async analyze(tx: Transaction, first: ReportVersion, second: ReportVersion) {
    const [a, b] = [await this.history.readerOf(tx, first), await this.history.readerOf(tx, second)];
    return analyzeVersions(first, second, { a, b });
  }

  private async hashes(actor: Actor, id: string): Promise<{ hash: string; answerHash: string | null }> {
    const row = await findRow(this.database, Hashes, {
      name: "comparison-hashes",
      text: comparisonHashes,
      values: [actor.organizations(), id, actor.account, this.clock.now()],
    });
    return found(row, "comparison");
  }

  /** The bytes of an answer that is stored by this hash. */
  private storedAnswer(id: string, hash: string): Promise<Uint8Array> {
    return this.kept.get(hash, () => this.loadAnswer(id));
  }

  private async loadAnswer(id: string): Promise<Uint8Array> {
    return this.database.transaction((tx) => readAnswer(tx, id));
  }

  private async loadDocument(id: string): Promise<Uint8Array> {
    const row = await findRow(this.database, DocumentRow, {
      text: comparisonDocument,
      values: [id],
    });
    return found(row, "comparison").document;
  }

  private async mayRead(tx: Transaction, actor: Actor, { vehicle, a, b }: Pair): Promise<boolean> {
    const readable = `SELECT count(*)::int AS count FROM report_version rv JOIN vehicle v ON v.id = rv.vehicle_id
      WHERE v.id = $2::uuid AND rv.id = ANY($3::uuid[]) AND ${maySeeVehicle("v")} AND ${maySeeVersion("rv", "v")}
        AND NOT ${mustBeBlind("v.id")}`;
    const values = [actor.organizations(), vehicle, [a, b]];
    const row = await findRow(tx, CountRow, { text: readable, values });
    return row?.count === new Set([a, b]).size;
  }
}
