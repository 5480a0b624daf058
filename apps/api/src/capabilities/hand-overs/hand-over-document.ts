import { compareHandOver } from "@evenhand/comparison/hand-over";
import { sealDocument } from "@evenhand/record/seal";
import type { SealedText } from "@evenhand/record/seal";
import { HandOverDocument } from "@evenhand/shared/hand-over";
import type { HandOverComparison } from "@evenhand/shared/hand-over";
import type { HandOverReportBody, HandOverStage } from "@evenhand/shared/http/hand-overs";
import type { FieldProblem } from "@evenhand/shared/problem";
import type { Report } from "@evenhand/shared/report";
import { checkReport } from "@evenhand/sheet/check-report";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { transportSheet1 } from "@evenhand/sheet/transport-sheet-1";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { sealedBytes } from "../../platform/database/sealed-bytes.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import type { StoredHandOver, StoredReport } from "./stored.ts";

export const transportSheet = compileSheet(transportSheet1);

/** Without these nothing can be compared: in what it was seen, and what it had driven. */
const NEEDED = ["visit.light", "visit.body-surface", "identity.odometer"];

const neededProblems = ({ findings }: Pick<Report, "findings">): FieldProblem[] =>
  NEEDED.filter((item) => !findings.some((each) => each.item === item)).map((item) => ({
    at: "/findings",
    item,
    position: "",
    reason: `“${transportSheet.items.get(item)?.item.words.american ?? item}” is not answered: answer it before signing.`,
  }));

const incomplete = (problems: readonly FieldProblem[]): ProblemError =>
  new ProblemError(
    "report-incomplete",
    "The report does not hold against the sheet; each problem is named.",
    {
      problems,
    },
  );

/** A report and the text of it that is signed. */
export type Signable = { readonly report: Report; readonly sealed: SealedText };

/**
 * What is signed, from what was written and the hand-over it belongs to.
 *
 * @throws ProblemError `report-incomplete` naming every problem
 */
export function makeSignable(handOver: StoredHandOver, body: HandOverReportBody): Signable {
  const check = checkReport(
    {
      format: "evenhand-report",
      version: 1,
      kind: body.stage,
      sheet: { id: transportSheet1.id, version: transportSheet1.version },
      vehicle: handOver.vehicle,
      author: { organization: handOver.carrier, role: "carrier" },
      visit: { started: body.started, ended: body.ended, zone: body.zone },
      instruments: [],
      persons: [],
      scales: [],
      findings: body.findings,
    },
    transportSheet1,
  );
  if (!check.ok) throw incomplete(check.problems);
  const missing = neededProblems(check.report);
  if (missing.length > 0) throw incomplete(missing);
  const document: HandOverDocument = {
    format: "evenhand-hand-over-report",
    version: 1,
    handOver: handOver.id,
    place: body.place,
    report: check.report,
    ...picturesOf(handOver, body.stage),
  };
  return { report: check.report, sealed: sealDocument(document, sha256Hex) };
}

/** What could not be read to its end has no bytes left to be held against. */
function picturesOf({ pictures }: StoredHandOver, stage: HandOverStage): Pick<HandOverDocument, "pictures"> {
  const named = pictures
    .filter((each) => each.stage === stage && each.state !== "refused")
    .map(({ item, position, sha256 }) => ({ item, position, sha256 }));
  return named.length === 0 ? {} : { pictures: named };
}

/** A signed document, held against its seal. @throws Error where it is not what was signed */
export const readSigned = ({ document, seal }: StoredReport): HandOverDocument => {
  const bytes = sealedBytes(Buffer.from(document, "utf8"), seal);
  return HandOverDocument.parse(JSON.parse(Buffer.from(bytes).toString("utf8")));
};

export const signedOf = (
  { reports }: Pick<StoredHandOver, "reports">,
  stage: HandOverStage,
): StoredReport | null => reports.find((each) => each.stage === stage) ?? null;

/** What arrived, set against what left. */
export function compareWithCollection(handOver: StoredHandOver, { report, sealed }: Signable) {
  const stored = signedOf(handOver, "collection");
  if (stored === null) throw new Error("A car is delivered that was not collected.");
  const collection = readSigned(stored).report;
  const comparison: HandOverComparison = compareHandOver(collection, report, transportSheet, {
    collection: stored.seal,
    delivery: sealed.seal,
  });
  return { comparison, reports: { collection, delivery: report } };
}
