import { createHash } from "node:crypto";
import { canonicalJson } from "@evenhand/record/canonical-json";
import { sealDocument } from "@evenhand/record/seal";
import { describe, expect, test } from "vitest";
import vectors from "../../fixtures/published/rfc8785-jcs.json" with { type: "json" };

const sha256 = (text: string): string => createHash("sha256").update(text, "utf8").digest("hex");

const numberOf = (bits: string): number => {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  return view.getFloat64(0);
};

/** Test vectors of the author of RFC 8785; source, commit and mark stand in the fixture. */
describe("canonical JSON", () => {
  test.each(vectors.cases)("$name", ({ input, output, outputSha256 }) => {
    const { text, seal } = sealDocument(JSON.parse(input), sha256);
    expect(text).toBe(output);
    expect(seal).toBe(outputSha256);
  });

  test.each(vectors.numbers_hex_to_string)("the number with the bits %s is written %s", (bits, written) => {
    expect(canonicalJson(numberOf(bits ?? ""))).toBe(written);
  });
});
