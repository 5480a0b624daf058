import { Injectable } from "@nestjs/common";
import { PictureSize } from "@evenhand/shared/evidence";
import { z } from "zod";
import { Clock } from "../../platform/clock/index.ts";
import { Database } from "../../platform/database/database.ts";
import { readRows } from "../../platform/database/rows.ts";
import { Storage } from "../../platform/storage/storage.ts";
import { copyKey, originalKey } from "./keys.ts";

const PlaceRow = z.object({ parts: z.array(z.string()) });
const FileRow = z.object({ id: z.string(), organization: z.string(), sha256: z.string() });

const atOnce = 200;

/** Abandoned uploads once their time is over, and what was taken away or refused a week and a month ago. What is sealed stays. */
const placesToTake = `
  DELETE FROM evidence WHERE id IN (
    SELECT e.id FROM evidence e WHERE e.sealed_in IS NULL AND (
      (e.state = 'arriving' AND e.expires_at < $1::timestamptz)
      OR e.removed_at < $1::timestamptz - interval '7 days'
      OR (e.state = 'refused' AND e.created_at < $1::timestamptz - interval '30 days'))
    LIMIT ${atOnce} FOR UPDATE SKIP LOCKED)
  RETURNING parts`;

/** Files at no place any more. */
const filesToTake = `
  DELETE FROM evidence_file WHERE id IN (
    SELECT f.id FROM evidence_file f WHERE f.created_at < $1::timestamptz - interval '1 day'
      AND NOT EXISTS (SELECT 1 FROM evidence e WHERE e.file_id = f.id)
      AND NOT EXISTS (SELECT 1 FROM hand_over_picture p WHERE p.file_id = f.id)
      AND NOT EXISTS (SELECT 1 FROM release_picture p WHERE p.file_id = f.id)
    LIMIT ${atOnce} FOR UPDATE SKIP LOCKED)
  RETURNING id, organization_id AS organization, sha256`;

/** Takes away what no longer serves anybody, from the database first: what is left in the storage then costs room and nothing else. */
@Injectable()
export class EvidenceSweep {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly storage: Storage,
  ) {}

  async sweep(): Promise<void> {
    const now = this.clock.now();
    const places = await readRows(this.database, PlaceRow, { text: placesToTake, values: [now] });
    for (const key of places.flatMap(({ parts }) => parts)) await this.storage.remove(key);
    const files = await readRows(this.database, FileRow, { text: filesToTake, values: [now] });
    for (const file of files) await this.removeFile(file);
    await this.storage.clearUnfinished(new Date(now.getTime() - 24 * 60 * 60_000));
  }

  private async removeFile({ id, organization, sha256 }: z.infer<typeof FileRow>): Promise<void> {
    await this.storage.remove(originalKey(organization, sha256));
    for (const size of PictureSize.options) await this.storage.remove(copyKey(id, size));
  }
}
