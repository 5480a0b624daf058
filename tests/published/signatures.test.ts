import { describe, expect, test } from "vitest";
import {
  publicBytes,
  readPrivateKey,
  signText,
  verifyText,
} from "../../apps/api/src/platform/record/ed25519.ts";
import { verifyText as verifyAway } from "../../apps/cli/src/check/ed25519.ts";

/** RFC 8032, 7.1, tests 1 and 2, from memory; a slip in any digit would not verify. */
const vectors = [
  {
    name: "test 1",
    seed: "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
    publicKey: "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
    message: "",
    signature:
      "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
  },
  {
    name: "test 2",
    seed: "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
    publicKey: "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
    message: "r",
    signature:
      "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
  },
];
const base64 = (hex: string): string => Buffer.from(hex, "hex").toString("base64");

describe("Ed25519 of RFC 8032", () => {
  test.each(vectors)("$name", ({ seed, publicKey, message, signature }) => {
    const key = readPrivateKey(base64(seed));
    expect(publicBytes(key).toString("hex")).toBe(publicKey);
    expect(signText(message, key)).toBe(base64(signature));
    for (const verify of [verifyText, verifyAway]) {
      expect(verify(message, base64(signature), base64(publicKey))).toBe(true);
      expect(verify(`${message}.`, base64(signature), base64(publicKey))).toBe(false);
    }
  });
});
