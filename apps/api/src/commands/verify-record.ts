import { readFileSync } from "node:fs";
import { Receipt, SealedFile } from "@evenhand/shared/chain";
import { receiptFault } from "@evenhand/record/signed-root";
import { type ChainFault, type ChainResult, verifyChain } from "@evenhand/record/verify-chain";
import { z } from "zod";
import { SystemClock } from "../platform/clock/index.ts";
import type { Config } from "../platform/config/index.ts";
import { Database } from "../platform/database/database.ts";
import { findRow, readRows, sql } from "../platform/database/rows.ts";
import { verifyText } from "../platform/record/ed25519.ts";
import { sha256Bytes } from "../platform/record/hash.ts";
import { readEntries, readReceipts } from "../platform/record/read-chain.ts";
import { SigningKeys } from "../platform/record/signing-keys.ts";

const ChainRow = z.object({ id: z.string(), name: z.string().nullable() });
const SizeRow = z.object({ size: z.number(), hash: z.string() });

export type Verified = { readonly lines: readonly string[]; readonly isWhole: boolean };

const faults: Readonly<Record<ChainFault, string>> = {
  changed: "it is not what was written then",
  missing: "it is not there, or another stands in its place",
  "does-not-follow": "it does not follow on the entry before: one of the two was put there later",
  "name-changed": "the name kept under it is not the one it was written with",
  "content-changed": "the content kept under it is not the one it was written with",
  "not-as-signed": "up to here the record is not the one that was signed: it was made anew",
  "cut-off": "the end of the record is gone",
};

/** A receipt, a sealed file with its receipt, or a letter with a signed root in it. @throws Error for what is none */
export function readReceiptFile(path: string): Receipt {
  const text = readFileSync(path, "utf8");
  const json: unknown = JSON.parse(/\{.*\}/s.exec(text)?.[0] ?? "null");
  const file = SealedFile.safeParse(json);
  if (file.success) return file.data.receipt;
  const receipt = Receipt.safeParse(json);
  if (receipt.success) return receipt.data;
  throw new Error(`${path} holds no receipt: give a sealed file, a receipt, or a letter with a signed root.`);
}

function brokenLine(result: Extract<ChainResult, { kind: "broken" }>): string {
  const { seq, to, fault } = result;
  const which = to === seq ? `entry ${seq}` : `one of the entries ${seq} to ${to}`;
  return `BROKEN at ${which}: ${faults[fault]}.`;
}

function tailLine(size: number, provenTo: number | null): string {
  if (provenTo === null) return "Tail not provable: give a receipt or a mailed root with --receipt.";
  if (provenTo < size) return `Proved up to entry ${provenTo} by what you gave; tail not provable after it.`;
  return "Proved to its end by what you gave.";
}

/** A service asked for what a record is, without one that serves. */
class Verifier {
  private readonly database: Database;
  private readonly keys: SigningKeys;
  private readonly given: Receipt | null;

  constructor(database: Database, keys: SigningKeys, given: Receipt | null) {
    this.database = database;
    this.keys = keys;
    this.given = given;
  }

  async verify(organization: string): Promise<Verified> {
    const kept = await readReceipts(this.database, organization);
    const receipts = this.given?.organization === organization ? [...kept, this.given] : kept;
    const wrong = receipts.find((one) => receiptFault(one, this.keys.published(), verifyText) !== null);
    if (wrong !== undefined)
      return {
        isWhole: false,
        lines: [
          `BROKEN: what was signed at ${wrong.at} for ${wrong.size} entries was not signed by a key of this service.`,
        ],
      };
    const entries = await readEntries(this.database, organization);
    const result = verifyChain(organization, entries, receipts, sha256Bytes);
    if (result.kind === "broken") return { isWhole: false, lines: [brokenLine(result)] };
    const size = await findRow(
      this.database,
      SizeRow,
      sql`SELECT size, hash FROM record_chain WHERE organization_id = ${organization}::uuid`,
    );
    if (size !== null && (size.size !== result.size || size.hash !== (entries.at(-1)?.hash ?? size.hash)))
      return {
        isWhole: false,
        lines: [
          `BROKEN at entry ${result.size + 1}: ${faults["cut-off"]}; the service has counted ${size.size}.`,
        ],
      };
    const proven = this.given?.organization === organization ? this.given.size : null;
    return { isWhole: true, lines: [`Whole: ${result.size} entries. ${tailLine(result.size, proven)}`] };
  }
}

/**
 * Holds the record of one organization, or of all, against itself and against what was signed of it.
 *
 * @param receiptFile what somebody has kept away from the service
 * @throws Error where there is no such record, or the file is no receipt of this service or of another organization
 */
export async function verifyRecord(
  config: Config,
  { organization, receiptFile }: { organization?: string | undefined; receiptFile?: string | undefined },
): Promise<Verified> {
  const given = receiptFile === undefined ? null : readReceiptFile(receiptFile);
  const asked = organization ?? given?.organization ?? null;
  if (given !== null && given.organization !== asked)
    throw new Error(`The receipt is of the record of organization ${given.organization}.`);
  const database = new Database(config.database);
  try {
    const keys = new SigningKeys(config, new SystemClock());
    keys.onModuleInit();
    const fault = given === null ? null : receiptFault(given, keys.published(), verifyText);
    if (fault !== null)
      throw new Error(`No key of this service has signed what ${receiptFile} says (${fault}).`);
    const chains = await readRows(
      database,
      ChainRow,
      sql`
      SELECT c.organization_id AS id, o.name FROM record_chain c LEFT JOIN organization o ON o.id = c.organization_id
      WHERE ${asked}::uuid IS NULL OR c.organization_id = ${asked}::uuid ORDER BY c.organization_id`,
    );
    if (asked !== null && chains.length === 0)
      throw new Error(`There is no record of organization ${asked}.`);
    const verifier = new Verifier(database, keys, given);
    const found: Verified[] = [];
    for (const { id, name } of chains) {
      const one = await verifier.verify(id);
      found.push({
        ...one,
        lines: [`${name ?? "An organization that is gone"} (${id})`, ...one.lines.map((line) => `  ${line}`)],
      });
    }
    return { lines: found.flatMap(({ lines }) => lines), isWhole: found.every(({ isWhole }) => isWhole) };
  } finally {
    await database.close();
  }
}
