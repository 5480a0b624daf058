import { randomBytes, type KeyObject } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { PublishedKey, type Receipt, type SealReceipt, type SignedRoot } from "@evenhand/shared/chain";
import { Instant } from "@evenhand/shared/identifier";
import { signedText } from "@evenhand/record/signed-root";
import { Inject, Injectable, type OnModuleInit } from "@nestjs/common";
import { z } from "zod";
import { Clock } from "../clock/index.ts";
import { CONFIG, type Config, ConfigError } from "../config/index.ts";
import { keyIdOf, publicBytes, readPrivateKey, signText } from "./ed25519.ts";

/** As the keys are given: a key without its private part has signed once and signs no more. */
const GivenKeys = z
  .array(
    z.union([
      z.strictObject({ from: Instant, private: z.string().min(1) }),
      z.strictObject({ from: Instant, public: PublishedKey.shape.publicKey }),
    ]),
  )
  .min(1);
type GivenKeys = z.infer<typeof GivenKeys>;

type Signature = Pick<Receipt, "key" | "signature">;
type Said = Omit<SignedRoot, keyof Signature> | Omit<SealReceipt, keyof Signature>;
type Key = PublishedKey & { readonly secret: KeyObject | null };

/** When each key is in force: from its own time until the next one's. */
function laidOut(given: GivenKeys): Key[] {
  const ordered = given.toSorted((a, b) => Date.parse(a.from) - Date.parse(b.from));
  return ordered.map((one, at) => {
    const secret = "private" in one ? readPrivateKey(one.private) : null;
    const bytes =
      "public" in one ? Buffer.from(one.public, "base64") : publicBytes(readPrivateKey(one.private));
    if (bytes.length !== 32) throw new Error("A public key has 32 bytes.");
    const until = ordered[at + 1]?.from ?? null;
    return { id: keyIdOf(bytes), publicKey: bytes.toString("base64"), from: one.from, until, secret };
  });
}

/** A key for one's own machine, made once and kept beside the demo's database: nobody else knows it, and nobody vouches for it. */
function makeWhereNone(file: string): void {
  if (existsSync(file)) return;
  const key = { from: "2000-01-01T00:00:00Z", private: randomBytes(32).toString("base64") };
  mkdirSync(dirname(file), { recursive: true });
  try {
    writeFileSync(file, `${JSON.stringify([key], null, 2)}\n`, { flag: "wx", mode: 0o600 });
  } catch (error) {
    // Another process was first, and its key is the one.
    if (!(error instanceof Error && "code" in error && error.code === "EEXIST")) throw error;
  }
}

/** The keys by which seals and roots are signed, and since when each is in force. */
@Injectable()
export class SigningKeys implements OnModuleInit {
  private keys: readonly Key[] = [];

  constructor(
    @Inject(CONFIG) private readonly config: Config,
    private readonly clock: Clock,
  ) {}

  /** @throws ConfigError where the keys can't be read, or none in force can sign; no value is repeated in what is said */
  onModuleInit(): void {
    const { keys, keysFile } = this.config.record;
    const name = keys === null ? "RECORD_KEYS_FILE" : "RECORD_KEYS";
    try {
      if (keys === null && this.config.http.publicUrl === null) makeWhereNone(keysFile);
      const text = keys ?? readFileSync(keysFile, "utf8");
      this.keys = laidOut(GivenKeys.parse(JSON.parse(text)));
    } catch {
      const reason = `not a list of keys, such as [{"from": "2026-01-01T00:00:00Z", "private": "seed of 32 bytes in base64"}]`;
      throw new ConfigError([{ name, reason }]);
    }
    if (this.keyAt(this.clock.now())?.secret == null)
      throw new ConfigError([
        { name, reason: "no key in force that can sign; docs/record.md says how they are kept" },
      ]);
  }

  /** For everybody to read; the newest first. */
  published(): PublishedKey[] {
    return this.keys.toReversed().map(({ id, publicKey, from, until }) => ({ id, publicKey, from, until }));
  }

  /** Signs what is said with the key in force at its time. */
  sign<S extends Said>(said: S): S & Signature {
    const key = this.keyAt(new Date(said.at));
    if (key?.secret == null) throw new Error(`No key that can sign was in force at ${said.at}.`);
    const named = { ...said, key: key.id };
    return { ...named, signature: signText(signedText(named), key.secret) };
  }

  private keyAt(at: Date): Key | undefined {
    return this.keys.findLast(({ from }) => Date.parse(from) <= at.getTime());
  }
}
