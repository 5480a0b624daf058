import { ChainEntry, type KeptEntry, type Receipt } from "@evenhand/shared/chain";
import { beforeFirst, commitment, entryHash, fromHex, toHex } from "@evenhand/record/chain-entry";
import {
  emptyFrontier,
  type Frontier,
  frontierRoot,
  grow,
  type HashBytes,
} from "@evenhand/record/merkle-tree";

/** What is wrong with the first broken entry. */
export type ChainFault =
  /** It is not what was hashed, or is no entry at all. */
  | "changed"
  /** Another entry stands in its place, or none. */
  | "missing"
  /** It does not follow on the entry before: one of the two was put there later. */
  | "does-not-follow"
  /** What is kept as the name under it is not what was committed to. */
  | "name-changed"
  /** What is kept as its content is not what was committed to. */
  | "content-changed"
  /** The record was made anew: as far as this it is not what was signed. */
  | "not-as-signed"
  /** The end is gone: a receipt proves that there was more. */
  | "cut-off";

export type ChainResult =
  | {
      readonly kind: "whole";
      readonly size: number;
      /** Merkle root over all entries, in hexadecimal. */
      readonly root: string;
      /** Entries of which a receipt proves that they are all there; the rest, up to `size`, nobody has signed for. */
      readonly provenTo: number;
    }
  | {
      readonly kind: "broken";
      /** The first broken entry. */
      readonly seq: number;
      /** Where nothing tells which of several it is, the last it may be; otherwise `seq`. */
      readonly to: number;
      readonly fault: ChainFault;
      /** Ending of what can still be relied on: a receipt that holds, before this. */
      readonly provenTo: number;
    };

type Heads = Pick<Receipt, "size" | "root">;

/** Whether the entry is what its hash says, and opens what is kept to open it. */
function ownFault(entry: KeptEntry, organization: string, sha256: HashBytes): ChainFault | null {
  const { hash, openings, ...said } = entry;
  const parsed = ChainEntry.safeParse(said);
  if (!parsed.success || entryHash(parsed.data, sha256) !== hash) return "changed";
  if (said.organization !== organization) return "missing";
  const { name, content } = openings;
  if (name !== null && commitment(name, sha256) !== said.name) return "name-changed";
  if (content !== null && commitment(content, sha256) !== said.content) return "content-changed";
  return null;
}

/**
 * Holds an organization's record against itself, and against what was signed of it elsewhere. Without a receipt the end can't be
 * proved: whoever may write to the database may cut off the last entries, or make the whole record anew.
 *
 * @param organization whose record it is
 * @param entries as they are kept, in the order of their numbers
 * @param receipts whose signatures hold, of this organization; each proves the record up to its size
 * @returns that it is whole and how far that is proved, or the first broken entry
 */
export function verifyChain(
  organization: string,
  entries: readonly KeptEntry[],
  receipts: readonly Heads[],
  sha256: HashBytes,
): ChainResult {
  const heads = receipts.toSorted((a, b) => a.size - b.size);
  let [tree, previous, proven, next]: [Frontier, string, number, number] = [emptyFrontier, beforeFirst, 0, 0];
  const broken = (seq: number, fault: ChainFault, to = seq): ChainResult => ({
    kind: "broken",
    seq,
    to,
    fault,
    provenTo: proven,
  });
  const root = (): string => toHex(frontierRoot(tree, sha256));
  for (const entry of entries) {
    for (let head = heads[next]; head !== undefined && head.size <= tree.size; head = heads[(next += 1)])
      if (head.root !== root()) return broken(proven + 1, "not-as-signed", head.size);
      else proven = head.size;
    const seq = tree.size + 1;
    if (entry.seq !== seq) return broken(seq, "missing");
    const fault = ownFault(entry, organization, sha256);
    if (fault !== null) return broken(seq, fault);
    if (entry.previous !== previous) return broken(seq, "does-not-follow");
    tree = grow(tree, fromHex(entry.hash), sha256);
    previous = entry.hash;
  }
  for (const head of heads.slice(next)) {
    if (head.size > tree.size) return broken(tree.size + 1, "cut-off", head.size);
    if (head.root !== root()) return broken(proven + 1, "not-as-signed", head.size);
    proven = head.size;
  }
  return { kind: "whole", size: tree.size, root: root(), provenTo: proven };
}
