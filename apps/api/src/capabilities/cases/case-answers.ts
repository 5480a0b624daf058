import { caseOf } from "@evenhand/case/case-of";
import type { CaseHome, CaseRow, CaseSeen } from "@evenhand/shared/http/cases";
import type { Statement } from "../../platform/database/database.ts";
import { holdRow } from "../../platform/database/rows.ts";
import type { ComparisonsService } from "../comparisons/index.ts";
import { mattersOf } from "./case-matters.ts";
import { pageOf } from "./home-page.ts";
import { DeskRow, HomeRow, SeenRow, type StoredRow } from "./rows.ts";

/** What a statement gave, as JSON text, not read yet. */
export type Given = { readonly statement: Statement; readonly body: string };

const toRow = ({ facts, ...row }: StoredRow): CaseRow => ({ ...row, standing: caseOf(facts) });
const parsed = ({ body }: Given): { body: unknown } => ({ body: JSON.parse(body) });

/** A first screen, as it goes out. @throws WrongRow */
export function homeAnswer(given: readonly Given[], desk: Given | null, limit: number): string {
  const homes = given.map((each) => {
    const { items, ...home } = holdRow(HomeRow, each.statement, parsed(each)).body;
    return { ...home, items: items.map(({ row, ...item }) => ({ ...item, row: toRow(row) })) };
  });
  const home: CaseHome = {
    ...pageOf(homes, limit),
    desk: desk === null ? null : holdRow(DeskRow, desk.statement, parsed(desk)).body,
  };
  return JSON.stringify(home);
}

/** A case with its matters, as it goes out. @throws WrongRow */
export async function caseAnswer(given: Given, comparisons: ComparisonsService): Promise<string> {
  const seen = holdRow(SeenRow, given.statement, parsed(given)).body;
  const { row, parts, zone, dealerFirst } = seen;
  const answer: CaseSeen = {
    ...toRow(row),
    parts,
    zone,
    dealerFirst,
    matters: await mattersOf(comparisons, seen),
  };
  return JSON.stringify(answer);
}
