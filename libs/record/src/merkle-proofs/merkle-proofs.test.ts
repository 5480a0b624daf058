import { assert, integer, nat, property } from "fast-check";
import { expect, test } from "vitest";
import {
  consistencyProof,
  inclusionProof,
  verifyConsistency,
  verifyInclusion,
} from "@evenhand/record/merkle-proofs";
import { leafHash, treeRoot } from "@evenhand/record/merkle-tree";
import { sha256 } from "../../testing/chain.ts";

const leaves = Array.from({ length: 40 }, (_, at) => leafHash(`leaf ${at}`, sha256));
const upTo = (size: number) => leaves.slice(0, size);
const root = (size: number) => treeRoot(upTo(size), sha256);
const sizes = integer({ min: 1, max: leaves.length });

test("every leaf of every tree is proved at its place, and at no other", () => {
  assert(
    property(sizes, nat(), nat(), (size, one, other) => {
      const [index, elsewhere] = [one % size, other % size];
      const proof = { path: inclusionProof(upTo(size), index, sha256), root: root(size) };
      const leaf = leaves[index] ?? new Uint8Array();
      expect(verifyInclusion(leaf, { index, size }, proof, sha256)).toBe(true);
      expect(verifyInclusion(leaf, { index: elsewhere, size }, proof, sha256)).toBe(elsewhere === index);
      expect(verifyInclusion(leafHash("none", sha256), { index, size }, proof, sha256)).toBe(false);
    }),
    { numRuns: 1000 },
  );
});

test("a tree is proved to begin as each before it, and as none that did not", () => {
  assert(
    property(sizes, sizes, (a, b) => {
      const [first, size] = [Math.min(a, b), Math.max(a, b)];
      const proof = consistencyProof(first, upTo(size), sha256);
      const [earlier, later] = [
        { size: first, root: root(first) },
        { size, root: root(size) },
      ];
      expect(verifyConsistency(earlier, later, proof, sha256)).toBe(true);
      const other = { size: first, root: leafHash("none", sha256) };
      expect(verifyConsistency(other, later, proof, sha256)).toBe(false);
      expect(verifyConsistency(earlier, { size, root: other.root }, proof, sha256)).toBe(false);
    }),
    { numRuns: 1000 },
  );
});

test("what is in no tree has no proof", () => {
  expect(() => inclusionProof(upTo(3), 3, sha256)).toThrow(RangeError);
  expect(() => consistencyProof(4, upTo(3), sha256)).toThrow(RangeError);
  expect(verifyInclusion(root(1), { index: 1, size: 1 }, { path: [], root: root(1) }, sha256)).toBe(false);
});
