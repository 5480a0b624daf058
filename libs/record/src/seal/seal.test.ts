import { createHash } from "node:crypto";
import { assert, jsonValue, nat, property } from "fast-check";
import { expect, test } from "vitest";
import { sealDocument, sealHolds } from "@evenhand/record/seal";

const sha256 = (text: string) => createHash("sha256").update(text, "utf8").digest("hex");

test("the seal is the hash of the canonical text", () => {
  const { text, seal } = sealDocument({ b: 1, a: 2 }, sha256);
  expect(text).toBe('{"a":2,"b":1}');
  expect(seal).toBe("d3626ac30a87e6f7a6428233b3c68299976865fa5508e4267c5415c76af7a772");
});

test("a seal holds for its own text and for no other", () => {
  assert(
    property(jsonValue(), nat(), (value, at) => {
      const { text, seal } = sealDocument(value, sha256);
      expect(sealHolds(text, seal, sha256)).toBe(true);
      const place = at % text.length;
      const changed = `${text.slice(0, place)}\u0001${text.slice(place + 1)}`;
      expect(sealHolds(changed, seal, sha256)).toBe(false);
    }),
    { numRuns: 1000 },
  );
});
