import type { Readable } from "node:stream";
import { Injectable } from "@nestjs/common";
import { DataStore, ERRORS, Upload } from "@tus/utils";
import { z } from "zod";
import { Database } from "../../platform/database/database.ts";
import { findRow } from "../../platform/database/rows.ts";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { Storage } from "../../platform/storage/storage.ts";
import { appendPart, uploadState } from "./uploads.queries.ts";
import { partKey } from "./keys.ts";

/** What a cut or a killed service can cost at most. */
const partBytes = 1024 * 1024;

const StateRow = z.object({ bytes: z.number(), received: z.number() });
const AppendedRow = z.object({ isWhole: z.boolean() });

/** Where the library for tus puts what arrives: parts in the storage, and how far they reach in the database. */
@Injectable()
export class PartStore extends DataStore {
  override extensions = ["creation"];
  constructor(
    private readonly database: Database,
    private readonly storage: Storage,
    private readonly jobs: Jobs,
  ) {
    super();
  }

  /** The row is there already: announcing the file made it. */
  override create(upload: Upload): Promise<Upload> {
    return Promise.resolve(upload);
  }

  override async getUpload(id: string): Promise<Upload> {
    const row = await findRow(this.database, StateRow, { text: uploadState, values: [id] });
    if (row === null) throw ERRORS.FILE_NOT_FOUND;
    return new Upload({ id, size: row.bytes, offset: row.received });
  }

  /** Whatever has come is kept, also where the connection is cut in the middle. */
  override async write(stream: Readable, id: string, offset: number): Promise<number> {
    let [at, waiting, cut]: [number, Buffer[], unknown] = [offset, [], undefined];
    const keep = async (): Promise<void> => {
      const part = Buffer.concat(waiting);
      waiting = [];
      if (part.length > 0) at = await this.append(id, at, part);
    };
    let size = 0;
    try {
      for await (const chunk of stream) {
        const bytes = Buffer.from(z.instanceof(Uint8Array).parse(chunk));
        waiting.push(bytes);
        size += bytes.length;
        if (size >= partBytes) {
          size = 0;
          await keep();
        }
      }
    } catch (error) {
      cut = error;
    }
    await keep();
    if (cut !== undefined) throw cut;
    return at;
  }

  /** @throws ERRORS.INVALID_OFFSET where somebody else went on from there meanwhile */
  private async append(id: string, at: number, part: Buffer): Promise<number> {
    const [key, end] = [partKey(id, at), at + part.length];
    await this.storage.put(key, part);
    const appended = await this.database.transaction(async (tx) => {
      const row = await findRow(tx, AppendedRow, { text: appendPart, values: [id, at, end, key] });
      if (row?.isWhole === true) await this.jobs.enqueue(tx, "evidence", id);
      return row !== null;
    });
    if (appended) return end;
    await this.storage.remove(key);
    throw ERRORS.INVALID_OFFSET;
  }
}
