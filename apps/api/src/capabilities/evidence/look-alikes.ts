import { Injectable } from "@nestjs/common";
import { type Fingerprint, fingerprintBytes, readFingerprint } from "@evenhand/evidence/fingerprint";
import { HashTable } from "@evenhand/evidence/hash-table";
import type { PictureSize } from "@evenhand/shared/evidence";
import { z } from "zod";
import { readRows, run, type Source } from "../../platform/database/rows.ts";
import { Storage } from "../../platform/storage/storage.ts";
import { copyKey } from "./keys.ts";
import { PictureProcess } from "./picture-process.ts";

/** Bits in which the hashes of a picture and of a copy may differ, chosen from the table in `docs/copies.md`. */
const RADIUS = 12;
/** Of what is near so many are looked at, the nearest first. */
const MOST_LOOKED_AT = 40;
/** A row that another worker wrote may be seen later than one with a higher number: so many numbers are read again each time. */
const READ_AGAIN = 500;

/** So many are read at once: a worker that begins has all of them to read. */
const PAGE = 10_000;

const PrintRow = z.object({ number: z.coerce.number(), hashes: z.instanceof(Uint8Array) });
type Noted = {
  readonly print: Fingerprint;
  readonly copies: readonly { readonly size: PictureSize; readonly bytes: Uint8Array }[];
};
const FileRow = z.object({ id: z.string() });

/**
 * Which pictures are one and the same. Every worker keeps the fingerprints of all of them in memory, read from the database and caught up
 * with before each search; what is near is laid over the picture and compared. A worker writes its own row before it reads, so of two at
 * once one sees the other.
 */
@Injectable()
export class LookAlikes {
  private readonly table = new HashTable();
  private readonly lately = new Set<number>();
  private last = 0;

  constructor(
    private readonly storage: Storage,
    private readonly pictures: PictureProcess,
  ) {}

  /** Notes a file's fingerprint and which others show the same picture. Doing it twice comes to the same. */
  async note(source: Source, file: string, { print, copies }: Noted): Promise<void> {
    await run(source, {
      text: `INSERT INTO picture_print (file_id, hashes) VALUES ($1::uuid, $2) ON CONFLICT (file_id) DO NOTHING`,
      values: [file, Buffer.from(fingerprintBytes(print))],
    });
    await this.catchUp(source);
    const near = this.table.near(print, RADIUS, MOST_LOOKED_AT).map(({ number }) => number);
    const others = await readRows(source, FileRow, {
      text: `SELECT file_id AS id FROM picture_print WHERE number = ANY($1::bigint[]) AND file_id <> $2::uuid`,
      values: [near, file],
    });
    const small = copies.find(({ size }) => size === "small");
    if (small === undefined || others.length === 0) return;
    for (const { id } of others) await this.compare(source, file, small.bytes, id);
  }

  private async compare(source: Source, file: string, small: Uint8Array, other: string): Promise<void> {
    const copy = await this.storage.read(copyKey(other, "small"));
    if (copy === null) return;
    const { isSame, agreement } = await this.pictures.compare(small, copy);
    if (!isSame) return;
    await run(source, {
      text: `INSERT INTO picture_likeness (file_id, other_id, agreement)
        SELECT a, b, $3 FROM (VALUES ($1::uuid, $2::uuid), ($2::uuid, $1::uuid)) pair (a, b)
        WHERE EXISTS (SELECT 1 FROM evidence_file f WHERE f.id = $2::uuid) ON CONFLICT DO NOTHING`,
      values: [file, other, agreement],
    });
  }

  private async catchUp(source: Source): Promise<void> {
    let [from, read] = [this.last - READ_AGAIN, PAGE];
    while (read === PAGE) {
      const rows = await readRows(source, PrintRow, {
        text: `SELECT number, hashes FROM picture_print WHERE number > $1 ORDER BY number LIMIT ${PAGE}`,
        values: [from],
      });
      for (const row of rows) this.add(row);
      [from, read] = [rows.at(-1)?.number ?? from, rows.length];
    }
    for (const number of this.lately) if (number <= this.last - READ_AGAIN) this.lately.delete(number);
  }

  private add({ number, hashes }: z.infer<typeof PrintRow>): void {
    if (this.lately.has(number)) return;
    this.table.add(number, readFingerprint(hashes));
    this.lately.add(number);
    this.last = Math.max(this.last, number);
  }
}
