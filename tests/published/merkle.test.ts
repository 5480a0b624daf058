import { createHash } from "node:crypto";
import {
  consistencyProof,
  inclusionProof,
  verifyConsistency,
  verifyInclusion,
} from "@evenhand/record/merkle-proofs";
import {
  emptyFrontier,
  frontierRoot,
  grow,
  leafHash,
  nodeHash,
  treeRoot,
} from "@evenhand/record/merkle-tree";
import { describe, expect, test } from "vitest";
import vectors from "../../fixtures/published/rfc6962-merkle.json" with { type: "json" };

const sha256 = (...parts: readonly (Uint8Array | string)[]): Uint8Array =>
  parts.reduce((hash, part) => hash.update(part), createHash("sha256")).digest();
const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString("hex");
const base64 = (bytes: Uint8Array): string => Buffer.from(bytes).toString("base64");
const bytes = (text: string): Uint8Array => Buffer.from(text, "base64");

const leaves = vectors.leavesHex.map((data) => leafHash(Buffer.from(data, "hex"), sha256));
const upTo = (size: number): Uint8Array[] => leaves.slice(0, size);

/** Test vectors of a published implementation of RFC 6962; source, commit and mark stand in the fixture. */
describe("Merkle tree of RFC 6962", () => {
  test("leaves and nodes are hashed under their own prefix", () => {
    expect(hex(leafHash(new Uint8Array(), sha256))).toBe(vectors.emptyLeafHash);
    expect(hex(leafHash(Buffer.from("L123456"), sha256))).toBe(vectors.leaf_ascii_L123456);
    expect(hex(nodeHash(Buffer.from("N123"), Buffer.from("N456"), sha256))).toBe(
      vectors.node_ascii_N123_N456,
    );
  });

  test("the root of every size, at once and leaf by leaf", () => {
    expect(vectors.rootBySize).toHaveLength(leaves.length + 1);
    let grown = emptyFrontier;
    for (const [size, root] of vectors.rootBySize.entries()) {
      expect(hex(treeRoot(upTo(size), sha256))).toBe(root);
      expect(hex(frontierRoot(grown, sha256))).toBe(root);
      const leaf = leaves[size];
      if (leaf !== undefined) grown = grow(grown, leaf, sha256);
    }
    expect(vectors.rootBySize[0]).toBe(vectors.emptyRoot);
  });

  const proofs = vectors.proofsHappyPath_base64;
  test.each(proofs.filter(({ kind }) => kind === "inclusion"))("$file", (vector) => {
    const { leafIdx: index = 0, treeSize: size = 0, root = "", leafHash: leaf = "", proof } = vector;
    const path = (proof ?? []).map(bytes);
    expect(verifyInclusion(bytes(leaf), { index, size }, { path, root: bytes(root) }, sha256)).toBe(true);
    expect(inclusionProof(upTo(size), index, sha256).map(base64)).toEqual(proof ?? []);
  });

  test.each(proofs.filter(({ kind }) => kind === "consistency"))("$file", (vector) => {
    const { size1 = 0, size2 = 0, root1 = "", root2 = "", proof } = vector;
    const [earlier, later] = [
      { size: size1, root: bytes(root1) },
      { size: size2, root: bytes(root2) },
    ];
    expect(verifyConsistency(earlier, later, (proof ?? []).map(bytes), sha256)).toBe(true);
    expect(consistencyProof(size1, upTo(size2), sha256).map(base64)).toEqual(proof ?? []);
  });
});
