import { z } from "zod";
import { Instant, ObjectId, Sha256 } from "./identifier.ts";

/** What happened, in two words: the thing, and what became of it. `docs/record.md` lists those there are. */
export const ChainKind = z.string().regex(/^[a-z]+(-[a-z]+)*\.[a-z]+(-[a-z]+)*$/, "such as report.sealed");

/**
 * One entry of an organization's record, as it is hashed: what happened to what, when and by whom, without a name and without what
 * it said. Both stand in it as salted commitments only, so that they can be forgotten and the chain stays whole.
 */
export const ChainEntry = z.strictObject({
  organization: ObjectId,
  /** Counted from 1, without a gap. */
  seq: z.int().positive(),
  /** Hash of the entry before; of the first, 64 zeros. */
  previous: Sha256,
  at: Instant,
  kind: ChainKind,
  /** The random id of what it happened to. */
  subject: ObjectId,
  /** The random id of the account that did it; `null` where the service did it by itself. */
  actor: ObjectId.nullable(),
  /** Commitment to the person's name at that time; `null` where there is nobody. */
  name: Sha256.nullable(),
  /** Commitment to what the change said. */
  content: Sha256,
});
export type ChainEntry = z.infer<typeof ChainEntry>;

/** What opens a commitment: its salt, and the canonical JSON under it. `null` once it was erased. */
export const Opening = z.strictObject({ salt: Sha256, text: z.string() });
export type Opening = z.infer<typeof Opening>;

/** An entry as it is kept: with its hash, and with what opens its commitments while that may be known. */
export const KeptEntry = ChainEntry.extend({
  hash: Sha256,
  openings: z.strictObject({ name: Opening.nullable(), content: Opening.nullable() }),
});
export type KeptEntry = z.infer<typeof KeptEntry>;

/** The first 16 hexadecimal digits of the SHA-256 of a public key's 32 bytes. */
export const KeyId = z.string().regex(/^[0-9a-f]{16}$/, "16 lower-case hexadecimal digits");

const signed = {
  organization: ObjectId,
  /** Entries the record had. */
  size: z.int().nonnegative(),
  /** Merkle root over them (RFC 6962, 2.1). */
  root: Sha256,
  at: Instant,
  key: KeyId,
  /** Ed25519 (RFC 8032) over the canonical JSON of all the rest, in base64. */
  signature: z.base64(),
};

/** How far an organization's record had come, signed every day. */
export const SignedRoot = z.strictObject({ what: z.literal("root"), ...signed });
export type SignedRoot = z.infer<typeof SignedRoot>;

/** What whoever sealed something was given: that it was sealed then, and how far the record had come with it. */
export const SealReceipt = z.strictObject({
  what: z.literal("seal"),
  /** The sealed version, or the summary. */
  subject: ObjectId,
  /** SHA-256 of its canonical JSON. */
  seal: Sha256,
  ...signed,
});
export type SealReceipt = z.infer<typeof SealReceipt>;

/** Whatever proves how far a record had come. */
export const Receipt = z.discriminatedUnion("what", [SignedRoot, SealReceipt]);
export type Receipt = z.infer<typeof Receipt>;

/** A public key and when it was in force: `until` is `null` for the one in force. */
export const PublishedKey = z.strictObject({
  id: KeyId,
  /** Its 32 bytes in base64. */
  publicKey: z.base64(),
  from: Instant,
  until: Instant.nullable(),
});
export type PublishedKey = z.infer<typeof PublishedKey>;

/** A sealed report or summary to take away: the very text that was sealed, and what proves it. */
export const SealedFile = z.strictObject({
  format: z.literal("evenhand-sealed-1"),
  receipt: SealReceipt,
  keys: z.array(PublishedKey),
  /** Canonical JSON (RFC 8785), byte for byte. */
  document: z.string(),
});
export type SealedFile = z.infer<typeof SealedFile>;
