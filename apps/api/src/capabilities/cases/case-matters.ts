import { caseMatters, releasedCaseMatters } from "@evenhand/case/case-matters";
import { openMatters } from "@evenhand/matters/open-matters";
import type { CaseMatter, CaseParts, CaseParty } from "@evenhand/shared/http/cases";
import type { Matter } from "@evenhand/shared/matter";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Database } from "../../platform/database/database.ts";
import { findRow } from "../../platform/database/rows.ts";
import { found } from "../../platform/problems/problem-error.ts";
import type { ComparisonsService } from "../comparisons/index.ts";
import { mattersSettled, releasedOfCase } from "./case-matters.queries.ts";
import { ReleasedRow, SettledRow } from "./rows.ts";

export type MatterSources = { readonly database: Database; readonly comparisons: ComparisonsService };
type Seen = { readonly id: string; readonly by: CaseParty; readonly parts: CaseParts };

/** Matters answered for: those of the summary's open ones, where several were answered for together each of them. */
const answeredFor = (
  matters: readonly Matter[],
  answers: readonly { readonly matter: string }[],
): ReadonlySet<string> => {
  if (answers.length === 0) return new Set();
  const given = new Set(answers.map(({ matter }) => matter));
  return new Set(openMatters(matters).flatMap(({ id, matters: of }) => (given.has(id) ? of : [])));
};

async function ofAnswer(
  { database, comparisons }: MatterSources,
  { by, parts }: Seen,
): Promise<CaseMatter[]> {
  // The statement that names them asks whether they may be read.
  const read = parts.inspections.find(({ comparison }) => comparison !== null)?.comparison;
  if (read == null) return [];
  const row = await findRow(database, SettledRow, {
    name: "case-matters-settled",
    text: mattersSettled,
    values: [read],
  });
  const { answerHash, released, answers } = found(row, "comparison").body;
  const { wrong, unknown } = await comparisons.matters(read, answerHash);
  const settling = { released, answeredFor: answeredFor([...wrong, ...unknown], answers ?? []) };
  return caseMatters({ comparison: read, wrong, unknown }, by === "buyer" ? settling : null);
}

async function ofReleased({ database }: MatterSources, actor: Actor, id: string): Promise<CaseMatter[]> {
  const row = await findRow(database, ReleasedRow, {
    name: "case-released-matters",
    text: releasedOfCase,
    values: [actor.organizations(), actor.organizations("dealer"), id],
  });
  return releasedCaseMatters(row?.body ?? []);
}

/** The matters of a case as this party may know them. */
export const mattersOf = (sources: MatterSources, actor: Actor, seen: Seen): Promise<CaseMatter[]> =>
  seen.by === "dealer" ? ofReleased(sources, actor, seen.id) : ofAnswer(sources, seen);
