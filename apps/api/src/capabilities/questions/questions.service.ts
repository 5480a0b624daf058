import { Injectable } from "@nestjs/common";
import {
  movesOfChange,
  OPEN_QUESTIONS,
  QUESTION_STATES,
  type QuestionMove,
} from "@evenhand/case/question-states";
import { decideMove } from "@evenhand/case/state-table";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import {
  type QuestionAnswer,
  type QuestionChange,
  type QuestionQuery,
  type QuestionRequest,
  QuestionState,
} from "@evenhand/shared/http/questions";
import { Vehicle } from "@evenhand/shared/report";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { z } from "zod";
import { findNoted, NotedRevisedBodyRow, readNotedPage } from "../../platform/access/exposure.ts";
import { checkRevision } from "../../platform/access/parameters.ts";
import { maySeeVehicle } from "../../platform/access/row-access.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { dayLimit, dayMs, keepOpenWithin, oneAtATime } from "../../platform/database/bounds.ts";
import { Ids } from "../../platform/database/ids.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { readCursor } from "../../platform/database/page.ts";
import { findRow, sql } from "../../platform/database/rows.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { OpenCases } from "../cases/index.ts";
import { NoticesService } from "../notices/index.ts";
import { StatementAnswers } from "./statement-answers.ts";
import { questionDetail, questionList } from "./questions.queries.ts";

const Locked = z.object({
  id: z.string(),
  revision: z.number(),
  state: QuestionState,
  vehicle: z.string(),
  buyer: z.string(),
  dealer: z.string(),
  item: z.string(),
  position: z.string(),
});
type Locked = z.infer<typeof Locked>;
type Asked = Omit<Locked, "revision" | "state">;

/** Buyers' questions on items, and the dealer's answers, which become findings of the next statement. */
@Injectable()
export class QuestionsService {
  static readonly writtenADay = 200;
  /** Of one buyer about one car, drafted or not answered yet. */
  static readonly mostOpen = 100;

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly notices: NoticesService,
    private readonly answers: StatementAnswers,
    private readonly cases: OpenCases,
    private readonly record: RecordChain,
  ) {}

  async list(actor: Actor, query: QuestionQuery): Promise<JsonText> {
    return readNotedPage(this.database, {
      name: "question-list",
      read: questionList,
      values: [
        actor.organizations(),
        readCursor(query),
        query.limit,
        query.vehicle ?? null,
        query.state ?? null,
        actor.account,
      ],
      now: this.clock.now(),
    });
  }

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await findNoted(this.database, NotedRevisedBodyRow, {
      name: "question",
      read: questionDetail,
      values: [actor.organizations(), id, actor.account],
      now: this.clock.now(),
    });
    const { body, revision } = found(row, "question");
    return new JsonText(body, String(revision));
  }

  /** A dealer answers them one by one. */
  private async keepWithinBounds(
    tx: Transaction,
    { account, buyer, vehicle }: { account: string; buyer: string; vehicle: string },
  ): Promise<void> {
    await oneAtATime(tx, "questions", buyer);
    const since = { gt: new Date(this.clock.now().getTime() - dayMs) };
    const written = await tx.question.count({ where: { createdBy: account, createdAt: since } });
    if (written >= QuestionsService.writtenADay)
      throw dayLimit(
        `You have written ${written} questions within a day, as many as may be. Go on tomorrow.`,
      );
    const where = { buyerId: buyer, vehicleId: vehicle, state: { in: [...OPEN_QUESTIONS] } };
    keepOpenWithin(
      await tx.question.count({ where }),
      QuestionsService.mostOpen,
      `${QuestionsService.mostOpen} questions of yours about this car are open, as many as may be at once. Wait for answers first.`,
    );
  }

  async create(
    tx: Transaction,
    actor: Actor,
    vehicle: string,
    { item, position, text, send }: QuestionRequest,
  ): Promise<CreatedDraft> {
    const { dealer, document } = await findVehicle(tx, actor, vehicle);
    checkPlace(document, item, position);
    const [id, now] = [this.ids.next(), this.clock.now()];
    const buyer = found(actor.organizations("buyer")[0], "buyer");
    await this.keepWithinBounds(tx, { account: actor.account, buyer, vehicle });
    await this.cases.open(tx, buyer, [vehicle]);
    await tx.question.create({
      data: {
        id,
        vehicleId: vehicle,
        buyerId: buyer,
        dealerId: dealer,
        item,
        position,
        text,
        state: send ? "asked" : "drafted",
        revision: 1,
        createdBy: actor.account,
        createdAt: now,
        askedAt: send ? now : null,
      },
    });
    if (send) await this.send(tx, actor, { id, buyer, dealer, vehicle, item, position }, text);
    return { id, revision: 1 };
  }

  async change(
    actor: Actor,
    id: string,
    meant: number,
    { text, move }: QuestionChange,
  ): Promise<CreatedDraft> {
    return this.database.transaction(async (tx) => {
      const question = await lock(tx, id, "buyer", actor.organizations("buyer"));
      checkRevision(question.revision, meant);
      const sending = move === "send";
      let state = question.state;
      for (const one of movesOfChange({ text, move })) state = stateAfter(state, one, "buyer");
      const asked = sending ? { askedAt: this.clock.now() } : {};
      const data = { text, state, ...asked, revision: meant + 1 };
      const now = await tx.question.update({ where: { id }, data, select: { text: true } });
      if (sending) await this.send(tx, actor, question, now.text);
      return { id, revision: meant + 1 };
    });
  }

  /** The dealer hears of it, and what was asked stands in both records, its words as their hash. */
  private async send(
    tx: Transaction,
    actor: Actor,
    { id, buyer, dealer, vehicle, item, position }: Asked,
    text: string,
  ): Promise<void> {
    await this.notices.tell(tx, { organization: dealer, kind: "question-asked", subject: id, vehicle });
    this.record.append(tx, {
      kind: "question.asked",
      organizations: [buyer, dealer],
      subject: id,
      actor: actor.account,
      content: { vehicle, item, position, words: sha256Hex(text) },
    });
  }

  /** The answer is a finding on the very place asked about; the buyer has it when the statement with it is sealed. */
  async answer(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    answer: QuestionAnswer,
  ): Promise<CreatedDraft> {
    const question = await lock(tx, id, "dealer", actor.organizations("dealer"));
    checkRevision(question.revision, meant);
    const state = stateAfter(question.state, "answer", "dealer");
    const { report, version } = await this.answers.write(tx, actor, question, answer);
    const data = { state, answeredAt: this.clock.now(), reportId: report, version };
    await tx.question.update({ where: { id }, data: { ...data, revision: meant + 1 } });
    const { buyer, vehicle } = question;
    await this.notices.tell(tx, { organization: buyer, kind: "question-answered", subject: id, vehicle });
    this.record.append(tx, {
      kind: "question.answered",
      organizations: [buyer, question.dealer],
      subject: id,
      actor: actor.account,
      content: { report, version },
    });
    return { id, revision: meant + 1 };
  }
}

/** @throws ProblemError `question-state` */
function stateAfter(state: QuestionState, move: QuestionMove, by: "buyer" | "dealer"): QuestionState {
  const moved = decideMove(QUESTION_STATES, state, move, by);
  if (moved.kind === "moved") return moved.to;
  throw new ProblemError(
    "question-state",
    `The question is ${state}; that cannot be done with it any more.`,
    { members: { state } },
  );
}

const AskedCar = z.object({ dealer: z.string(), document: Vehicle });

async function findVehicle(
  tx: Transaction,
  actor: Actor,
  vehicle: string,
): Promise<z.infer<typeof AskedCar>> {
  const row = await findRow(tx, AskedCar, {
    text: `SELECT v.organization_id AS dealer, v.document FROM vehicle v WHERE v.id = $2::uuid AND ${maySeeVehicle("v")}`,
    values: [actor.organizations(), vehicle],
  });
  return found(row, "car");
}

/** @throws ProblemError `invalid-fields` where the sheet has no such place on this car */
function checkPlace({ form }: Vehicle, item: string, position: string): void {
  const places = applicablePlaces(sheetVersion1, form).filter((place) => place.item.id === item);
  if (places.some((place) => place.position === position)) return;
  const at = places.length === 0 ? "/item" : "/position";
  const reason =
    places.length === 0 ? "an item of the sheet that applies to this car" : "a position of this item";
  throw new ProblemError("invalid-fields", "Ask about an item and position of this car's sheet.", {
    problems: [{ at, reason }],
  });
}

/** The buyer's own, or one asked of the dealer; held until the transaction ends. */
async function lock(
  tx: Transaction,
  id: string,
  by: "buyer" | "dealer",
  organizations: string[],
): Promise<Locked> {
  const row = await findRow(
    tx,
    Locked,
    sql`
    SELECT id, revision, state, vehicle_id AS vehicle, buyer_id AS buyer, dealer_id AS dealer, item, position
    FROM question WHERE id = ${id}::uuid
      AND CASE WHEN ${by} = 'buyer' THEN buyer_id = ANY(${organizations}::uuid[])
        ELSE dealer_id = ANY(${organizations}::uuid[]) AND asked_at IS NOT NULL END
    FOR UPDATE`,
  );
  return found(row, "question");
}
