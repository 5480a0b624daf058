import { createHash } from "node:crypto";
import type { KeptEntry } from "@evenhand/shared/chain";
import { canonicalJson } from "@evenhand/record/canonical-json";
import { beforeFirst, commitment, entryHash, fromHex, toHex } from "@evenhand/record/chain-entry";
import { treeRoot } from "@evenhand/record/merkle-tree";

export const sha256 = (...parts: readonly (Uint8Array | string)[]): Uint8Array =>
  parts.reduce((hash, part) => hash.update(part), createHash("sha256")).digest();

export const organization = "01930000-0000-7000-8000-000000000001";

const numbered = (tail: number): string => `01930000-0000-7000-8000-${String(tail).padStart(12, "0")}`;
const opening = (value: unknown, salt: number) => ({
  salt: salt.toString(16).padStart(64, "0"),
  text: canonicalJson(value),
});

/** An entry after these, that says so much. */
export function entryAfter(entries: readonly KeptEntry[], says: number): KeptEntry {
  const seq = entries.length + 1;
  const openings = { name: opening("Wendel Ashcombe", 1_000 + seq), content: opening({ says }, 2_000 + seq) };
  const entry = {
    organization,
    seq,
    previous: entries.at(-1)?.hash ?? beforeFirst,
    at: new Date(Date.UTC(2026, 4, 4, 15, seq)).toISOString(),
    kind: "report.sealed",
    subject: numbered(says),
    actor: numbered(500),
    name: commitment(openings.name, sha256),
    content: commitment(openings.content, sha256),
  };
  return { ...entry, hash: entryHash(entry, sha256), openings };
}

/** A whole record that says these things, one after the other. */
export const chainOf = (says: readonly number[]): KeptEntry[] =>
  says.reduce<KeptEntry[]>((entries, one) => [...entries, entryAfter(entries, one)], []);

/** What a receipt over the first so many entries says. */
export const headOf = (entries: readonly KeptEntry[], size = entries.length) => ({
  size,
  root: toHex(
    treeRoot(
      entries.slice(0, size).map(({ hash }) => fromHex(hash)),
      sha256,
    ),
  ),
});
