import { type HashBytes, nodeHash, treeRoot } from "@evenhand/record/merkle-tree";

const equal = (a: Uint8Array, b: Uint8Array): boolean =>
  a.length === b.length && a.every((byte, at) => byte === b[at]);

/** The largest power of two smaller than `size`, which is 2 or more. */
const split = (size: number): number => 2 ** Math.floor(Math.log2(size - 1));

/**
 * What proves that a leaf is in a tree: hashes from the leaf's neighbor up to the root's child (RFC 6962, 2.1.1).
 *
 * @param leaves hashes of all leaves
 * @param index of the leaf, from 0
 * @throws {RangeError} where there is no such leaf
 */
export function inclusionProof(
  leaves: readonly Uint8Array[],
  index: number,
  sha256: HashBytes,
): readonly Uint8Array[] {
  if (!(index >= 0 && index < leaves.length)) throw new RangeError(`There is no leaf ${index}.`);
  if (leaves.length === 1) return [];
  const at = split(leaves.length);
  const [left, right] = [leaves.slice(0, at), leaves.slice(at)];
  return index < at
    ? [...inclusionProof(left, index, sha256), treeRoot(right, sha256)]
    : [...inclusionProof(right, index - at, sha256), treeRoot(left, sha256)];
}

/** The way up, and whether it ended exactly at the root: the walk of RFC 9162, 2.1.3.2. */
function climb(
  leaf: Uint8Array,
  place: { index: number; size: number },
  proof: readonly Uint8Array[],
  sha256: HashBytes,
): Uint8Array | null {
  let [at, last, hash] = [place.index, place.size - 1, leaf];
  for (const sibling of proof) {
    if (last === 0) return null;
    if (at % 2 === 1 || at === last) {
      hash = nodeHash(sibling, hash, sha256);
      for (; at % 2 === 0 && at !== 0; at /= 2) last = Math.floor(last / 2);
    } else hash = nodeHash(hash, sibling, sha256);
    [at, last] = [Math.floor(at / 2), Math.floor(last / 2)];
  }
  return last === 0 ? hash : null;
}

/** Is a leaf at this place of the tree with this root? */
export function verifyInclusion(
  leaf: Uint8Array,
  place: { readonly index: number; readonly size: number },
  proof: { readonly path: readonly Uint8Array[]; readonly root: Uint8Array },
  sha256: HashBytes,
): boolean {
  if (!(place.index >= 0 && place.index < place.size)) return false;
  const hash = climb(leaf, place, proof.path, sha256);
  return hash !== null && equal(hash, proof.root);
}

function subproof(
  first: number,
  leaves: readonly Uint8Array[],
  isWhole: boolean,
  sha256: HashBytes,
): readonly Uint8Array[] {
  if (first === leaves.length) return isWhole ? [] : [treeRoot(leaves, sha256)];
  const at = split(leaves.length);
  const [left, right] = [leaves.slice(0, at), leaves.slice(at)];
  return first <= at
    ? [...subproof(first, left, isWhole, sha256), treeRoot(right, sha256)]
    : [...subproof(first - at, right, false, sha256), treeRoot(left, sha256)];
}

/**
 * What proves that a tree began as an earlier one (RFC 6962, 2.1.2).
 *
 * @param first size of the earlier tree, from 1 to the number of leaves
 * @throws {RangeError} for another size
 */
export function consistencyProof(
  first: number,
  leaves: readonly Uint8Array[],
  sha256: HashBytes,
): readonly Uint8Array[] {
  if (!(first >= 1 && first <= leaves.length)) throw new RangeError(`There was no tree of ${first}.`);
  return subproof(first, leaves, true, sha256);
}

/** A tree as it is signed: how many leaves, and its root. */
export type TreeHead = { readonly size: number; readonly root: Uint8Array };

/** Does the later tree begin as the earlier one? The walk of RFC 9162, 2.1.4.2. */
export function verifyConsistency(
  earlier: TreeHead,
  later: TreeHead,
  proof: readonly Uint8Array[],
  sha256: HashBytes,
): boolean {
  if (earlier.size < 1 || earlier.size > later.size) return false;
  if (earlier.size === later.size) return proof.length === 0 && equal(earlier.root, later.root);
  const isPower = Number.isInteger(Math.log2(earlier.size));
  const [start, ...path] = isPower ? [earlier.root, ...proof] : proof;
  if (start === undefined) return false;
  let [at, last] = [earlier.size - 1, later.size - 1];
  for (; at % 2 === 1; at = Math.floor(at / 2)) last = Math.floor(last / 2);
  let [before, now] = [start, start];
  for (const hash of path) {
    if (last === 0) return false;
    if (at % 2 === 1 || at === last) {
      [before, now] = [nodeHash(hash, before, sha256), nodeHash(hash, now, sha256)];
      for (; at % 2 === 0 && at !== 0; at /= 2) last = Math.floor(last / 2);
    } else now = nodeHash(now, hash, sha256);
    [at, last] = [Math.floor(at / 2), Math.floor(last / 2)];
  }
  return last === 0 && equal(before, earlier.root) && equal(now, later.root);
}
