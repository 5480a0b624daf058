import { CaseParty, type CasesOfPart, type DealerFirst } from "@evenhand/shared/http/cases";
import type { EvidenceOfBoth } from "@evenhand/shared/http/evidence";
import type { PageQuery } from "@evenhand/shared/http/paging";
import { Injectable } from "@nestjs/common";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { AnswerCache } from "../../platform/database/answer-cache.ts";
import { Database, type Statement } from "../../platform/database/database.ts";
import { readCursor } from "../../platform/database/page.ts";
import { BodyRow, findRow, readRows } from "../../platform/database/rows.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { notFound } from "../../platform/problems/problem-error.ts";
import { ComparisonsService } from "../comparisons/index.ts";
import { EvidenceService } from "../evidence/index.ts";
import { caseAnswer, type Given, homeAnswer } from "./case-answers.ts";
import { carOfCase, caseDetails, caseHomes, partCases } from "./cases.queries.ts";
import { operatorDesk } from "./desk.queries.ts";
import { CarOfCaseRow, PartCaseRow } from "./rows.ts";

const homeOf = (actor: Actor, by: CaseParty, query: PageQuery): Statement => ({
  name: `case-home-${by}`,
  text: caseHomes[by],
  isLong: true,
  values: [
    actor.organizations(),
    actor.organizations(by),
    readCursor(query),
    query.limit,
    query.after === undefined,
  ],
});

/** Cases as each of their parties may know them: put together from what is stored, and for as long as that is the same, once. */
@Injectable()
export class CasesService {
  constructor(
    private readonly database: Database,
    private readonly comparisons: ComparisonsService,
    private readonly files: EvidenceService,
    private readonly clock: Clock,
    private readonly answers: AnswerCache,
  ) {}

  /** Who is more than one of the four gets what is theirs as each. */
  async home(actor: Actor, query: PageQuery): Promise<JsonText> {
    const [homes, desk] = await Promise.all([
      Promise.all(partiesOf(actor).map((by) => this.ask(homeOf(actor, by, query)))),
      actor.isOperator && query.after === undefined ? this.desk() : null,
    ]);
    const there = homes.filter((home) => home !== null);
    const asked = `home ${actor.account} ${query.limit} ${query.after ?? ""}`;
    const from = [desk?.body ?? "", ...there.map(({ body }) => body)];
    return new JsonText(await this.answers.get(asked, from, () => homeAnswer(there, desk, query.limit)));
  }

  async get(actor: Actor, id: string): Promise<JsonText> {
    for (const by of partiesOf(actor)) {
      const seen = await this.ask({
        name: `case-${by}`,
        text: caseDetails[by],
        isLong: true,
        values: [actor.organizations(), actor.organizations(by), id],
      });
      if (seen === null) continue;
      const make = () => caseAnswer(seen, this.comparisons);
      return new JsonText(await this.answers.get(`case ${by} ${actor.account} ${id}`, [seen.body], make));
    }
    throw notFound("case");
  }

  /** The cases that a question, a visit, a comparison or any other part of a case belongs to, as far as they are the person's. */
  async ofPart(actor: Actor, part: string): Promise<CasesOfPart> {
    const found = await Promise.all(
      partiesOf(actor).map((by) =>
        readRows(this.database, PartCaseRow, {
          name: `part-cases-${by}`,
          text: partCases[by],
          values: [actor.organizations(), actor.organizations(by), part],
        }),
      ),
    );
    const items = found.flat().map(({ item }) => item);
    if (items.length === 0) throw notFound("case");
    return { items };
  }

  /** Photographs and papers of both sides, by item and position. */
  async evidence(actor: Actor, id: string): Promise<EvidenceOfBoth> {
    for (const by of partiesOf(actor)) {
      const car = await findRow(this.database, CarOfCaseRow, {
        text: carOfCase[by],
        values: [actor.organizations(), actor.organizations(by), id],
      });
      if (car !== null) return this.files.ofVehicle(actor, car.vehicle, car.buyer);
    }
    throw notFound("case");
  }

  /** The buyer lets the dealer answer before they read, or no longer: it holds for what is sealed from now on. */
  async letDealerFirst(actor: Actor, id: string, { allowed }: DealerFirst): Promise<DealerFirst> {
    const where = { id, buyerId: { in: actor.organizations("buyer") } };
    const data = { laysAtSealBy: allowed ? actor.account : null };
    const { count } = await this.database.transaction((tx) => tx.buyerCase.updateMany({ where, data }));
    if (count === 0) throw notFound("case");
    return { allowed };
  }

  private desk(): Promise<Given | null> {
    return this.ask({ name: "operator-desk", text: operatorDesk, values: [this.clock.now()] });
  }

  private async ask(statement: Statement): Promise<Given | null> {
    const row = await findRow(this.database, BodyRow, statement);
    return row === null ? null : { statement, body: row.body };
  }
}

const partiesOf = (actor: Actor): CaseParty[] =>
  CaseParty.options.filter((party) => actor.kinds.includes(party));
