import { caseMatters, releasedCaseMatters } from "@evenhand/case/case-matters";
import { openMatters } from "@evenhand/matters/open-matters";
import type { CaseMatter } from "@evenhand/shared/http/cases";
import type { Matter } from "@evenhand/shared/matter";
import type { z } from "zod";
import type { ComparisonsService } from "../comparisons/index.ts";
import type { ReadAnswer, SeenRow } from "./rows.ts";

type Seen = z.infer<typeof SeenRow>["body"];

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
  comparisons: ComparisonsService,
  { comparison, answerHash, released, answers }: ReadAnswer,
  settles: boolean,
): Promise<CaseMatter[]> {
  // The statement that named it asked whether it may be read.
  const { wrong, unknown } = await comparisons.matters(comparison, answerHash);
  const settling = { released, answeredFor: answeredFor([...wrong, ...unknown], answers ?? []) };
  return caseMatters({ comparison, wrong, unknown }, settles ? settling : null);
}

/** The matters of a case as this party may know them. */
export async function mattersOf(
  comparisons: ComparisonsService,
  { row, read, laid }: Seen,
): Promise<CaseMatter[]> {
  if (row.as === "dealer") return releasedCaseMatters(laid);
  return read === null ? [] : ofAnswer(comparisons, read, row.as === "buyer");
}
