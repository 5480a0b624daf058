import { Injectable } from "@nestjs/common";
import { z } from "zod";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { Database } from "../../platform/database/database.ts";
import { findRow, run } from "../../platform/database/rows.ts";
import { Storage } from "../../platform/storage/storage.ts";
import { KeptFiles } from "./kept-files.ts";

const ArrivedRow = z.object({
  organization: z.string(),
  sha256: z.string(),
  state: z.string(),
  parts: z.array(z.string()),
});
type Arrived = z.infer<typeof ArrivedRow>;

/** What a worker does with a file whose last byte is here. Killed anywhere, it begins again and comes to the same end. */
@Injectable()
export class Arrivals {
  constructor(
    private readonly database: Database,
    private readonly storage: Storage,
    private readonly files: KeptFiles,
  ) {}

  /** @param id of a file at its place of a report, or of a kept file that is at no such place */
  async take(id: string): Promise<void> {
    const kept = await this.files.findById(this.database, id);
    if (kept !== null) return this.files.prepare(this.database, kept);
    const arrived = await findRow(this.database, ArrivedRow, {
      text: `SELECT organization_id AS organization, sha256, state, parts FROM evidence WHERE id = $1::uuid`,
      values: [id],
    });
    if (arrived === null || arrived.state !== "pending") return;
    const { organization, sha256 } = arrived;
    const file =
      (await this.files.find(this.database, organization, sha256)) ?? (await this.keepWhole(arrived));
    if (file === null) await this.refuseAltered(id);
    else {
      await run(this.database, {
        text: `UPDATE evidence SET file_id = $2::uuid WHERE id = $1::uuid`,
        values: [id, file.id],
      });
      await this.files.prepare(this.database, file);
    }
    await this.dropParts(id, arrived.parts);
  }

  /** `null` where what came is not what was announced. */
  private async keepWhole({ organization, sha256, parts }: Arrived) {
    const bytes = await this.join(parts);
    if (bytes === null || sha256Hex(bytes) !== sha256) return null;
    return this.files.keep(this.database, organization, sha256, bytes);
  }

  private async join(parts: readonly string[]): Promise<Buffer | null> {
    const read: Buffer[] = [];
    for (const part of parts) {
      const bytes = await this.storage.read(part);
      if (bytes === null) return null;
      read.push(bytes);
    }
    return Buffer.concat(read);
  }

  private refuseAltered(id: string): Promise<void> {
    return run(this.database, {
      text: `UPDATE evidence SET state = 'refused', refused = '{"reason":"altered"}' WHERE id = $1::uuid AND file_id IS NULL`,
      values: [id],
    });
  }

  private async dropParts(id: string, parts: readonly string[]): Promise<void> {
    for (const part of parts) await this.storage.remove(part);
    await run(this.database, { text: `UPDATE evidence SET parts = '[]' WHERE id = $1::uuid`, values: [id] });
  }
}
