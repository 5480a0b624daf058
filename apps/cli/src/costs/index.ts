import { createHash } from "node:crypto";
import { costByMatter } from "@evenhand/decision/cost-by-matter";
import { costsAtStake } from "@evenhand/decision/costs-at-stake";
import { sealDocument } from "@evenhand/record/seal";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { Comparison } from "@evenhand/shared/comparison";
import { CostTable } from "@evenhand/shared/cost-table";
import type { Answer, AnswerCost } from "@evenhand/shared/page-one";
import type { Report } from "@evenhand/shared/report";
import { readJson } from "../read-json.ts";

/** What is priced by: a table of costs, and what is asked for the car in its currency's minor units. */
export type Pricing = { readonly table: CostTable; readonly asking: number | null };
export type ReadPricing =
  { readonly ok: true; readonly pricing: Pricing | null } | { readonly ok: false; readonly reason: string };

const refused = (reason: string): ReadPricing => ({ ok: false, reason });

const minorDigits = (currency: string): number =>
  new Intl.NumberFormat("en-US", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ??
  2;

/**
 * The table of costs in a file, and the asking price as it was typed: `31500` or `31500.50`.
 *
 * @returns `pricing` `null` where neither was given; a reason where one of them cannot be used
 */
export const readPricing = (file: string | undefined, asking: string | undefined): ReadPricing => {
  if (file === undefined)
    return asking === undefined
      ? { ok: true, pricing: null }
      : refused("--asking goes with --costs FILE, whose currency it is in.");
  if (asking !== undefined && !/^\d{1,10}(\.\d{1,2})?$/.test(asking))
    return refused(`--asking is an amount such as 31500, not ${asking}.`);
  const read = readJson(file);
  if (!read.ok) return refused(`${file}: ${read.reason}`);
  const table = CostTable.safeParse(read.json);
  if (!table.success) {
    const [issue] = table.error.issues;
    return refused(
      `${file}: It is no table of costs: /${issue?.path.join("/") ?? ""} ${issue?.message ?? ""}`,
    );
  }
  const minor =
    asking === undefined ? null : Math.round(Number(asking) * 10 ** minorDigits(table.data.currency));
  return { ok: true, pricing: { table: table.data, asking: minor } };
};

const DRAWS = 10_000;

/** The same comparison and table give the same figures, here as in the service: drawn with a seed from the comparison's hash. */
const seedOf = (comparison: Comparison): number => {
  const { seal } = sealDocument(comparison, (text) => createHash("sha256").update(text).digest("hex"));
  return Number.parseInt(seal.slice(0, 8), 16);
};

type Compared = { readonly comparison: Comparison; readonly b: Report; readonly answer: Answer };

/**
 * What putting right may cost, by matter, from the reader's own figures.
 *
 * @returns `null` where no table is given: nothing is guessed
 */
export const answerCost = (
  { comparison, b, answer }: Compared,
  pricing: Pricing | null,
): AnswerCost | null => {
  if (pricing === null) return null;
  const { table, asking } = pricing;
  return {
    asking: asking === null ? null : { minor: asking, currency: table.currency },
    cost: costByMatter({
      atStake: costsAtStake({ comparison, found: b, sheet: sheetVersion1, table }),
      matters: [...answer.matters, ...answer.unknown].map(({ matter }) => matter),
      table: table.name,
      draws: DRAWS,
      seed: seedOf(comparison),
    }),
  };
};
