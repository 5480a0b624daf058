import { analyze } from "@evenhand/comparison/analyze";
import type { AnalyzeOptions } from "@evenhand/comparison/analyze";
import { ENGINE } from "@evenhand/comparison/engine";
import { answer } from "@evenhand/matters/answer";
import { matters } from "@evenhand/matters/matters";
import { type ReleasedLine, releasedMatters } from "@evenhand/matters/released-matters";
import type { Place } from "@evenhand/record/place";
import { compiledSheet as sheet } from "@evenhand/record/report-document";
import { sealDocument } from "@evenhand/record/seal";
import { secondLookPlaces } from "@evenhand/record/second-look";
import { statementCounts } from "@evenhand/record/statement-counts";
import type { Comparison } from "@evenhand/shared/comparison";
import type { ReleasedMatter } from "@evenhand/shared/http/releases";
import { Answer } from "@evenhand/shared/page-one";
import { Report } from "@evenhand/shared/report";
import type { Prisma } from "../../platform/database/generated/client.ts";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { sealedBytes } from "../../platform/database/sealed-bytes.ts";

/** Stored with every comparison. */
export const engine = ENGINE;

type Version = { document: Uint8Array; seal: string };
/** What became of a statement in an inspection, by section, as it is stored. */
type StoredCounts = Prisma.InputJsonObject;
/** Without counts where the two are not a statement and an inspection of it. */
type Analysis = StoredAnswer & {
  document: Uint8Array<ArrayBuffer>;
  hash: string;
  statementCounts?: StoredCounts;
};
/** Page one as it is stored: its bytes and their hash. */
export type StoredAnswer = { answer: Uint8Array<ArrayBuffer>; answerHash: string };

const read = ({ document, seal }: Version): Report =>
  Report.parse(JSON.parse(Buffer.from(sealedBytes(document, seal)).toString("utf8")));

export const countStatements = (comparison: Comparison): StoredCounts => statementCounts(comparison, sheet);

const bytesOf = (text: string): Uint8Array<ArrayBuffer> => new Uint8Array(Buffer.from(text, "utf8"));

/** Page one of a comparison of two reports, held against its contract before it is stored. */
export function answerOf(comparison: Comparison, a: Report, b: Report): StoredAnswer {
  const reports = { a, b, sheet };
  const page = answer({ comparison, matters: matters(comparison, reports), reports });
  const { text, seal } = sealDocument(Answer.parse(page), sha256Hex);
  return { answer: bytesOf(text), answerHash: seal };
}

/** The matter of each line laid before a dealer, worded from those lines alone. */
export const mattersReleased = (lines: readonly ReleasedLine[]): (ReleasedMatter | null)[] =>
  releasedMatters(lines, sheet);

/** The whole comparison of two sealed versions, as the bytes that are stored. */
export function analyzeVersions(
  first: Version,
  second: Version,
  history: AnalyzeOptions["history"] = {},
): Analysis {
  const [a, b] = [read(first), read(second)];
  const comparison = analyze(a, b, sheet, { seals: { a: first.seal, b: second.seal }, history });
  const { text, seal } = sealDocument(comparison, sha256Hex);
  const stored = { document: bytesOf(text), hash: seal, ...answerOf(comparison, a, b) };
  const isOfStatement = a.kind === "statement" && b.kind === "inspection";
  return isOfStatement ? { ...stored, statementCounts: countStatements(comparison) } : stored;
}

/**
 * Where an inspector is to look again: places alone. Which of them part from the statement cannot be told from the order in which
 * the others were taken, since that hangs on the statement's bytes.
 */
export function placesToLookAgain(statement: Version, inspection: Report, report: string): Place[] {
  const comparison = analyze(read(statement), inspection, sheet);
  const secret = sha256Hex(`${report} ${Buffer.from(statement.document).toString("utf8")}`);
  return secondLookPlaces(comparison, (place) => sha256Hex(`${secret} ${place}`));
}
