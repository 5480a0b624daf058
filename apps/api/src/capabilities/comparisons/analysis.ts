import { analyze } from "@evenhand/comparison/analyze";
import { ENGINE } from "@evenhand/comparison/engine";
import { sealDocument } from "@evenhand/record/seal";
import { Report } from "@evenhand/shared/report";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { sha256Hex } from "../../platform/auth/secret.ts";

/** Stored with every comparison. */
export const engine = ENGINE;

const sheet = compileSheet(sheetVersion1);

type Version = { document: Uint8Array; seal: string };
type Analysis = { document: Uint8Array<ArrayBuffer>; hash: string };

const read = ({ document }: Version): Report =>
  Report.parse(JSON.parse(Buffer.from(document).toString("utf8")));

/** The whole comparison of two sealed versions, as the bytes that are stored. */
export function analyzeVersions(a: Version, b: Version): Analysis {
  const comparison = analyze(read(a), read(b), sheet, { seals: { a: a.seal, b: b.seal } });
  const { text, seal } = sealDocument(comparison, sha256Hex);
  return { document: new Uint8Array(Buffer.from(text, "utf8")), hash: seal };
}
