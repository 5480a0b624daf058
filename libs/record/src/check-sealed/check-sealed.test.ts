import { createHash, generateKeyPairSync, sign, verify } from "node:crypto";
import type { PublishedKey, SealReceipt } from "@evenhand/shared/chain";
import { assert, jsonValue, nat, property } from "fast-check";
import { expect, test } from "vitest";
import { checkSealed } from "@evenhand/record/check-sealed";
import { sealDocument } from "@evenhand/record/seal";
import { signedText } from "@evenhand/record/signed-root";
import { headOf, organization } from "../../testing/chain.ts";

const sha256 = (text: string) => createHash("sha256").update(text, "utf8").digest("hex");
const { privateKey, publicKey } = generateKeyPairSync("ed25519");
const key: PublishedKey = {
  id: "0123456789abcdef",
  publicKey: "the test's own",
  from: "2026-01-01T00:00:00Z",
  until: "2027-01-01T00:00:00Z",
};
const given = {
  sha256,
  verify: (text: string, signature: string) =>
    verify(null, Buffer.from(text), publicKey, Buffer.from(signature, "base64")),
};

function sealed(document: unknown, at = "2026-05-04T15:00:00Z") {
  const { text, seal } = sealDocument(document, sha256);
  const said = {
    what: "seal" as const,
    organization,
    subject: organization,
    seal,
    ...headOf([]),
    at,
    key: key.id,
  };
  const signature = sign(null, Buffer.from(signedText(said)), privateKey).toString("base64");
  const receipt: SealReceipt = { ...said, signature };
  return { document: text, receipt };
}
const check = (file: ReturnType<typeof sealed>, keys = [key]) => checkSealed(file, keys, given);

test("what was sealed holds, and with one character changed it holds no more", () => {
  assert(
    property(jsonValue(), nat(), (document, at) => {
      const file = sealed(document);
      expect(check(file)).toBeNull();
      const place = at % file.document.length;
      const old = file.document[place];
      const text = `${file.document.slice(0, place)}${old === "0" ? "1" : "0"}${file.document.slice(place + 1)}`;
      expect(["not-json", "not-canonical", "not-as-sealed"]).toContain(check({ ...file, document: text }));
    }),
    { numRuns: 1000 },
  );
});

test("the same value written otherwise is not what was sealed", () => {
  const file = sealed({ b: 1, a: 2 });
  expect(check({ ...file, document: '{"b":1,"a":2}' })).toBe("not-canonical");
});

test.each([
  ["size", { size: 7 }, "wrong-signature"],
  ["time", { at: "2026-05-04T15:00:01Z" }, "wrong-signature"],
  ["organization", { organization: organization.replace(/1$/, "3") }, "wrong-signature"],
  ["key", { key: "fedcba9876543210" }, "unknown-key"],
] as const)("a receipt of another %s is refused", (_, change, fault) => {
  const file = sealed({ a: 1 });
  expect(check({ ...file, receipt: { ...file.receipt, ...change } })).toBe(fault);
});

test("a key signs within its time only: from its first instant, and before its last", () => {
  expect(check(sealed(1, "2026-01-01T00:00:00Z"))).toBeNull();
  for (const at of ["2025-12-31T23:59:59Z", "2027-01-01T00:00:00Z"])
    expect(check(sealed(1, at))).toBe("key-not-in-force");
  expect(check(sealed(1, "2030-01-01T00:00:00Z"), [{ ...key, until: null }])).toBeNull();
});
