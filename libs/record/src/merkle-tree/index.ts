/**
 * SHA-256 over parts, one after the other; a text stands for its UTF-8 bytes. Passed in: every place that runs this has its own
 * fast one.
 */
export type HashBytes = (...parts: readonly (Uint8Array | string)[]) => Uint8Array;

const [ofLeaf, ofNode] = [new Uint8Array([0]), new Uint8Array([1])];

/** Hash of a leaf: `SHA-256(0x00 ‖ data)` (RFC 6962, 2.1). */
export const leafHash = (data: Uint8Array | string, sha256: HashBytes): Uint8Array => sha256(ofLeaf, data);

/** Hash of two subtrees: `SHA-256(0x01 ‖ left ‖ right)` (RFC 6962, 2.1). */
export const nodeHash = (left: Uint8Array, right: Uint8Array, sha256: HashBytes): Uint8Array =>
  sha256(ofNode, left, right);

/**
 * All that is needed of a growing tree to go on with it and to name its root: the roots of its full subtrees, the largest first,
 * one for every bit that is set in `size`.
 */
export type Frontier = { readonly size: number; readonly peaks: readonly Uint8Array[] };

export const emptyFrontier: Frontier = { size: 0, peaks: [] };

/**
 * The tree with one leaf more, in as many hashes as subtrees are filled by it.
 *
 * @param leaf the leaf's hash
 */
export function grow({ size, peaks }: Frontier, leaf: Uint8Array, sha256: HashBytes): Frontier {
  const next = [...peaks];
  let right = leaf;
  for (let filled = size; filled % 2 === 1; filled = (filled - 1) / 2) {
    const left = next.pop();
    if (left === undefined) throw new RangeError("A frontier has one peak for every bit of its size.");
    right = nodeHash(left, right, sha256);
  }
  return { size: size + 1, peaks: [...next, right] };
}

/** Root of the tree under a frontier: of an empty one, the hash of nothing (RFC 6962, 2.1). */
export function frontierRoot({ peaks }: Frontier, sha256: HashBytes): Uint8Array {
  const last = peaks.at(-1);
  if (last === undefined) return sha256();
  return peaks.slice(0, -1).reduceRight((right, left) => nodeHash(left, right, sha256), last);
}

/** Root over the hashes of leaves (RFC 6962, 2.1). */
export const treeRoot = (leaves: readonly Uint8Array[], sha256: HashBytes): Uint8Array =>
  frontierRoot(
    leaves.reduce<Frontier>((tree, leaf) => grow(tree, leaf, sha256), emptyFrontier),
    sha256,
  );
