import { createHash, generateKeyPairSync, sign, verify } from "node:crypto";
import { checkSealed } from "@evenhand/record/check-sealed";
import { sealDocument } from "@evenhand/record/seal";
import { signedText } from "@evenhand/record/signed-root";
import { type PublishedKey, SealedFile, type SealReceipt } from "@evenhand/shared/chain";
import { expect, test } from "vitest";
import { makeSealedFile, NotAsSealed, sha256Hex } from "./sealed-file";

const sha256 = (text: string) => createHash("sha256").update(text, "utf8").digest("hex");
const { privateKey, publicKey } = generateKeyPairSync("ed25519");
const keys: PublishedKey[] = [
  { id: "0123456789abcdef", publicKey: "AAAA", from: "2026-01-01T00:00:00Z", until: null },
];
const { text, seal } = sealDocument({ word: "Türgriff — 12 °C", b: 1, a: [2.5] }, sha256);
const said = {
  what: "seal" as const,
  organization: "0196a000-0000-7000-8000-000000000001",
  subject: "0196a000-0000-7000-8000-000000000002",
  seal,
  size: 3,
  root: sha256("root"),
  at: "2026-05-04T15:00:00Z",
  key: "0123456789abcdef",
};
const signature = sign(null, Buffer.from(signedText(said)), privateKey).toString("base64");
const receipt: SealReceipt = { ...said, signature };

// FIPS 180-4, example "abc".
test("the hash is SHA-256 of the text", async () => {
  expect(await sha256Hex("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
});

test("the file is of the form that is checked, and once written and read again it holds", async () => {
  const file = await makeSealedFile(receipt, keys, text);
  const read = SealedFile.parse(JSON.parse(JSON.stringify(file)));
  expect(read).toEqual({ format: "evenhand-sealed-1", receipt, keys, document: text });
  const given = {
    sha256,
    verify: (words: string, signed: string) =>
      verify(null, Buffer.from(words), publicKey, Buffer.from(signed, "base64")),
  };
  expect(checkSealed(read, read.keys, given)).toBeNull();
});

test("of anything but what was sealed no file is made", async () => {
  await expect(makeSealedFile(receipt, keys, text.replace("2.5", "2.6"))).rejects.toThrow(NotAsSealed);
  await expect(makeSealedFile(receipt, keys, `${text}\n`)).rejects.toThrow(NotAsSealed);
});
