import { randomBytes } from "node:crypto";
import type { Opening, SealReceipt, SignedRoot } from "@evenhand/shared/chain";
import type { Sha256 } from "@evenhand/shared/identifier";
import { canonicalJson } from "@evenhand/record/canonical-json";
import { beforeFirst, commitment, entryHash, fromHex, toHex } from "@evenhand/record/chain-entry";
import { type Frontier, frontierRoot, grow } from "@evenhand/record/merkle-tree";
import { Injectable, type OnModuleInit } from "@nestjs/common";
import { z } from "zod";
import { Clock } from "../clock/index.ts";
import { Database, type Transaction } from "../database/database.ts";
import { readRows, run } from "../database/rows.ts";
import { sha256Bytes } from "./hash.ts";
import type { RecordKind } from "./kinds.ts";
import { SigningKeys } from "./signing-keys.ts";

/** What a change says in the record: ids, states, numbers and seals; never a name, and nobody's own words. */
export type RecordContent = Readonly<Record<string, string | number | boolean | null | readonly string[]>>;

export type RecordedChange = {
  readonly kind: RecordKind;
  /** Whose records it goes into: everybody it concerns and who may know of it. Named twice, one stands in it once. */
  readonly organizations: readonly string[];
  /** The id of what it happened to. */
  readonly subject: string;
  /** The account that did it; `null` where the service did it by itself. */
  readonly actor: string | null;
  readonly content: RecordContent;
};

type Waiting = RecordedChange & { readonly at: Date };

const ChainRow = z.object({
  organizationId: z.string(),
  size: z.number(),
  hash: z.string(),
  peaks: z.array(z.string()),
});
const NameRow = z.object({ id: z.string(), name: z.string() });

/** A record as it is gone on with. */
type Held = { readonly organization: string; tree: Frontier; hash: Sha256 };

const salted = (value: unknown): Opening => ({
  salt: randomBytes(32).toString("hex"),
  text: canonicalJson(value),
});

/**
 * The record nobody can rewrite: an append-only log a organization, each entry chained to the one before. What a transaction
 * appends is written at its end, so that the lock of a record, the last of all locks, is held for a moment only.
 */
@Injectable()
export class RecordChain implements OnModuleInit {
  private readonly waiting = new WeakMap<Transaction, Waiting[]>();

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly keys: SigningKeys,
  ) {}

  onModuleInit(): void {
    this.database.atEnd(async (tx) => {
      await this.write(tx, []);
    });
  }

  /** One line where something is changed: it stands in the record if, and only if, the transaction comes to its end. */
  append(tx: Transaction, change: RecordedChange): void {
    const waiting = this.waiting.get(tx) ?? [];
    waiting.push({ ...change, at: this.clock.now() });
    this.waiting.set(tx, waiting);
  }

  /**
   * What proves to whoever sealed something that it was sealed then, signed. Asked for last in a transaction, since what was
   * appended before is written with it, and the record held from then on.
   */
  async receiptOf(
    tx: Transaction,
    { organization, subject, seal }: { organization: string; subject: string; seal: Sha256 },
  ): Promise<SealReceipt> {
    const at = this.clock.now();
    const [held] = await this.write(tx, [organization]);
    if (held === undefined) throw new Error("A record that is held is there.");
    const receipt = this.keys.sign({
      what: "seal" as const,
      organization,
      subject,
      seal,
      size: held.tree.size,
      root: toHex(frontierRoot(held.tree, sha256Bytes)),
      at: at.toISOString(),
    });
    const { size, root, key, signature } = receipt;
    await tx.sealReceipt.create({
      data: { subject, organizationId: organization, seal, size, root, at, key, signature },
    });
    return receipt;
  }

  /** How far a record has come, signed and kept; `null` where that was signed already. */
  async signRoot(tx: Transaction, organization: string): Promise<SignedRoot | null> {
    const [held] = await this.write(tx, [organization]);
    if (held === undefined) throw new Error("A record that is held is there.");
    const { size } = held.tree;
    const signed = await tx.recordRoot.findFirst({
      where: { organizationId: organization, size: { gte: size } },
      select: { size: true },
    });
    if (size === 0 || signed !== null) return null;
    const at = this.clock.now();
    const root = this.keys.sign({
      what: "root" as const,
      organization,
      size,
      root: toHex(frontierRoot(held.tree, sha256Bytes)),
      at: at.toISOString(),
    });
    const { key, signature } = root;
    await tx.recordRoot.create({
      data: { organizationId: organization, size, root: root.root, at, key, signature },
    });
    return root;
  }

  /** What opens an account's name goes out of every record, for good. The commitments to it stay, and the chain with them. */
  async forgetName(tx: Transaction, account: string): Promise<void> {
    const where = { actor: account, nameSalt: { not: null } };
    await tx.recordEntry.updateMany({ where, data: { nameSalt: null, nameText: null } });
  }

  /** Writes what waits, and gives the records asked for as they stand then, held. */
  private async write(tx: Transaction, asked: readonly string[]): Promise<Held[]> {
    const waiting = this.waiting.get(tx) ?? [];
    this.waiting.delete(tx);
    const concerned = waiting.flatMap(({ organizations }) => organizations);
    if (concerned.length + asked.length === 0) return [];
    const held = await hold(tx, [...new Set([...concerned, ...asked])].toSorted());
    const names = await namesOf(tx, waiting);
    const entries = waiting.flatMap((change) =>
      [...new Set(change.organizations)].map((organization) =>
        follow(heldOf(held, organization), change, names),
      ),
    );
    if (entries.length > 0) {
      await tx.recordEntry.createMany({ data: entries });
      await keep(tx, [...held.values()]);
    }
    return asked.map((organization) => heldOf(held, organization));
  }
}

function heldOf(held: ReadonlyMap<string, Held>, organization: string): Held {
  const found = held.get(organization);
  if (found === undefined) throw new Error(`The record of ${organization} is not held.`);
  return found;
}

/** Holds records until the transaction ends, in the order of their organizations' ids; begins those that are not there. */
async function hold(tx: Transaction, organizations: readonly string[]): Promise<Map<string, Held>> {
  const rows = await readRows(tx, ChainRow, {
    text: `INSERT INTO record_chain AS c (organization_id, size, hash, peaks)
      SELECT o.id, 0, $2, '{}' FROM unnest($1::uuid[]) WITH ORDINALITY AS o (id, place) ORDER BY o.place
      ON CONFLICT (organization_id) DO UPDATE SET size = c.size
      RETURNING organization_id AS "organizationId", size, hash, peaks`,
    values: [organizations, beforeFirst],
  });
  return new Map(
    rows.map(({ organizationId: organization, size, hash, peaks }) => [
      organization,
      { organization, hash, tree: { size, peaks: peaks.map(fromHex) } },
    ]),
  );
}

async function namesOf(tx: Transaction, changes: readonly Waiting[]): Promise<Map<string, string>> {
  const actors = [...new Set(changes.flatMap(({ actor }) => actor ?? []))];
  if (actors.length === 0) return new Map();
  const rows = await readRows(tx, NameRow, {
    text: "SELECT id, name FROM account WHERE id = ANY($1::uuid[])",
    values: [actors],
  });
  return new Map(rows.map(({ id, name }) => [id, name]));
}

/** The next entry of a record, which goes on from it afterwards. */
function follow(held: Held, change: Waiting, names: ReadonlyMap<string, string>) {
  const { kind, subject, actor, at } = change;
  const called = actor === null ? undefined : names.get(actor);
  const [name, content] = [called === undefined ? null : salted(called), salted(change.content)];
  const committed = {
    name: name === null ? null : commitment(name, sha256Bytes),
    content: commitment(content, sha256Bytes),
  };
  const { organization, hash: previous } = held;
  const link = { seq: held.tree.size + 1, previous, kind, subject, actor, ...committed };
  held.hash = entryHash({ organization, ...link, at: at.toISOString() }, sha256Bytes);
  held.tree = grow(held.tree, fromHex(held.hash), sha256Bytes);
  return {
    ...link,
    organizationId: organization,
    at,
    hash: held.hash,
    nameSalt: name?.salt ?? null,
    nameText: name?.text ?? null,
    contentSalt: content.salt,
    contentText: content.text,
  };
}

async function keep(tx: Transaction, held: readonly Held[]): Promise<void> {
  await run(tx, {
    text: `UPDATE record_chain c SET size = n.size, hash = n.hash, peaks = string_to_array(n.peaks, ' ')
      FROM unnest($1::uuid[], $2::int[], $3::text[], $4::text[]) AS n (id, size, hash, peaks)
      WHERE c.organization_id = n.id`,
    values: [
      held.map(({ organization }) => organization),
      held.map(({ tree }) => tree.size),
      held.map(({ hash }) => hash),
      held.map(({ tree }) => tree.peaks.map(toHex).join(" ")),
    ],
  });
}
