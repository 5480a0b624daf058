import { Injectable } from "@nestjs/common";
import { caseOf } from "@evenhand/case/case-of";
import {
  type CaseHome,
  CaseParty,
  type CaseRow,
  type CaseSeen,
  type CasesOfPart,
  type OperatorDesk,
} from "@evenhand/shared/http/cases";
import type { PageQuery } from "@evenhand/shared/http/paging";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database } from "../../platform/database/database.ts";
import { readCursor } from "../../platform/database/page.ts";
import { findRow, readRows } from "../../platform/database/rows.ts";
import { notFound } from "../../platform/problems/problem-error.ts";
import { ComparisonsService } from "../comparisons/index.ts";
import { mattersOf } from "./case-matters.ts";
import { caseDetails, caseHomes, partCases } from "./cases.queries.ts";
import { operatorDesk } from "./desk.queries.ts";
import { pageOf } from "./home-page.ts";
import { DeskRow, HomeRow, PartCaseRow, SeenRow, type StoredRow } from "./rows.ts";

const toRow = ({ facts, ...row }: StoredRow): CaseRow => ({ ...row, standing: caseOf(facts) });

/** Cases as each of their parties may know them: put together from what is stored, kept nowhere. */
@Injectable()
export class CasesService {
  constructor(
    private readonly database: Database,
    private readonly comparisons: ComparisonsService,
    private readonly clock: Clock,
  ) {}

  /** Who is more than one of the four gets what is theirs as each. */
  async home(actor: Actor, query: PageQuery): Promise<CaseHome> {
    const first = query.after === undefined;
    const [homes, desk] = await Promise.all([
      Promise.all(partiesOf(actor).map((by) => this.homeAs(actor, by, query))),
      actor.isOperator && first ? this.desk() : null,
    ]);
    return { ...pageOf(homes, query.limit), desk };
  }

  async get(actor: Actor, id: string): Promise<CaseSeen> {
    for (const by of partiesOf(actor)) {
      const found = await findRow(this.database, SeenRow, {
        name: `case-${by}`,
        text: caseDetails[by],
        values: [actor.organizations(), actor.organizations(by), id],
      });
      if (found === null) continue;
      const { row, parts } = found.body;
      return {
        ...toRow(row),
        parts,
        matters: await mattersOf({ database: this.database, comparisons: this.comparisons }, actor, {
          id,
          by,
          parts,
        }),
      };
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

  private async homeAs(actor: Actor, by: CaseParty, query: PageQuery) {
    const all = actor.organizations();
    const found = await findRow(this.database, HomeRow, {
      name: `case-home-${by}`,
      text: caseHomes[by],
      values: [all, actor.organizations(by), readCursor(query), query.limit, query.after === undefined],
    });
    const { open = 0, drafts = [], drafting = 0, items = [] } = found?.body ?? {};
    return { open, drafts, drafting, items: items.map(({ row, ...item }) => ({ ...item, row: toRow(row) })) };
  }

  private async desk(): Promise<OperatorDesk | null> {
    const found = await findRow(this.database, DeskRow, {
      name: "operator-desk",
      text: operatorDesk,
      values: [this.clock.now()],
    });
    return found?.body ?? null;
  }
}

const partiesOf = (actor: Actor): CaseParty[] =>
  CaseParty.options.filter((party) => actor.kinds.includes(party));
