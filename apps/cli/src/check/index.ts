import { createHash } from "node:crypto";
import { parseArgs } from "node:util";
import { checkSealed, type SealedFault } from "@evenhand/record/check-sealed";
import { PublishedKey, SealedFile } from "@evenhand/shared/chain";
import { z } from "zod";
import { readJson } from "../read-json.ts";
import { done, type Shell, unusable } from "../shell.ts";
import { usage } from "../usage.ts";
import { verifyText } from "./ed25519.ts";

/** As the service publishes them at `/api/v1/record/keys`, or the bare list. */
const Keys = z.union([
  z.object({ items: z.array(PublishedKey) }).transform(({ items }) => items),
  z.array(PublishedKey),
]);

const words: Readonly<Record<SealedFault, string>> = {
  "not-json": "The document in it is not JSON: it is not what was sealed.",
  "not-canonical":
    "The document in it is written otherwise than a sealed one ever is (RFC 8785): it is not what was sealed, byte for byte.",
  "not-as-sealed": "The document was changed: its SHA-256 is not the one that was sealed.",
  "unknown-key": "It names a key that is not among the keys: nobody known signed it.",
  "key-not-in-force": "The key that signed it was not in force at that time.",
  "wrong-signature": "The signature is not of this receipt: one of the two was changed.",
};

/** Exit code: what was checked does not hold. */
const broken = 1;

type Read<T> = { readonly value: T } | { readonly reason: string };

function read<S extends z.ZodType>(path: string, schema: S): Read<z.output<S>> {
  const file = readJson(path);
  if (!file.ok) return { reason: file.reason };
  const parsed = schema.safeParse(file.json);
  if (parsed.success) return { value: parsed.data };
  const [issue] = parsed.error.issues;
  return { reason: `${issue?.path.join("/") ?? ""}: ${issue?.message ?? "not of the form it must have"}` };
}

const sha256 = (text: string): string => createHash("sha256").update(text, "utf8").digest("hex");

const whole = ({ receipt }: SealedFile, hasKeys: boolean): string => `The file holds.
  sealed     ${receipt.at}
  SHA-256    ${receipt.seal}
  signed by  key ${receipt.key}
  record     entry ${receipt.size} of organization ${receipt.organization}
${
  hasKeys
    ? "The key is among those you gave."
    : "The key was taken from the file itself. That proves only that the file holds together: get the service's keys from the service, at /api/v1/record/keys, and give them with --keys."
}
It is what was sealed then. Whether what it says of the car is true, it does not say.`;

/** `check FILE [--keys FILE]`: a sealed report or summary, checked with nothing but the file and the service's public keys. */
export function checkCommand(args: readonly string[], shell: Shell): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    options: { keys: { type: "string" } },
    allowPositionals: true,
    strict: false,
  });
  const [path, ...more] = positionals;
  if (path === undefined || more.length > 0 || values.keys === true) {
    shell.error(usage.check);
    return unusable;
  }
  const file = read(path, SealedFile);
  if ("reason" in file) {
    shell.error(
      `${path} is no sealed file of this service. It is downloaded from the page of a sealed report or summary.\n${file.reason}`,
    );
    return unusable;
  }
  const given = typeof values.keys === "string" ? read(values.keys, Keys) : { value: file.value.keys };
  if ("reason" in given) {
    shell.error(`${String(values.keys)} holds no keys as the service publishes them.\n${given.reason}`);
    return unusable;
  }
  const fault = checkSealed(file.value, given.value, { sha256, verify: verifyText });
  shell.out(fault === null ? whole(file.value, values.keys !== undefined) : words[fault]);
  return fault === null ? done : broken;
}
