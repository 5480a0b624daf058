import { Injectable } from "@nestjs/common";
import { decideMove } from "@evenhand/case/state-table";
import { EVIDENCE_STATES } from "@evenhand/case/evidence-states";
import { sniffFile } from "@evenhand/evidence/sniff-file";
import { type EvidenceMove, EvidenceState, FileKind, type PictureCopy } from "@evenhand/shared/evidence";
import { z } from "zod";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Ids } from "../../platform/database/ids.ts";
import { findRow, run, type Source } from "../../platform/database/rows.ts";
import { Storage } from "../../platform/storage/storage.ts";
import { copyKey, originalKey } from "./keys.ts";
import { LookAlikes } from "./look-alikes.ts";
import { PictureProcess } from "./picture-process.ts";
import type { Picture } from "./picture-task.ts";
import type { StoredRefusal } from "./stored-refusal.ts";

const FileRow = z.object({
  id: z.string(),
  organization: z.string(),
  sha256: z.string(),
  state: EvidenceState,
  kind: FileKind.nullable(),
});
export type KeptFile = z.infer<typeof FileRow>;

const fileFields = `id, organization_id AS organization, sha256, state, kind`;
const pictureKinds: readonly (FileKind | null)[] = ["jpeg", "png", "webp", "avif"];

/** Can copies be made of it? */
export const isPicture = (kind: FileKind | null): boolean => pictureKinds.includes(kind);

/** The state a worker's move leads to. */
function moved(from: EvidenceState, move: EvidenceMove): EvidenceState {
  const decided = decideMove(EVIDENCE_STATES, from, move, "worker");
  if (decided.kind === "moved") return decided.to;
  throw new Error(`A file in the state ${from} does not ${move}.`);
}

/** An organization's files by their hash: each is checked, kept and prepared once. Everything here may be done twice. */
@Injectable()
export class KeptFiles {
  constructor(
    private readonly storage: Storage,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly lookAlikes: LookAlikes,
    private readonly pictures: PictureProcess,
  ) {}

  find(source: Source, organization: string, sha256: string): Promise<KeptFile | null> {
    const text = `SELECT ${fileFields} FROM evidence_file WHERE organization_id = $1::uuid AND sha256 = $2`;
    return findRow(source, FileRow, { text, values: [organization, sha256] });
  }

  findById(source: Source, id: string): Promise<KeptFile | null> {
    const text = `SELECT ${fileFields} FROM evidence_file WHERE id = $1::uuid`;
    return findRow(source, FileRow, { text, values: [id] });
  }

  /** Finds out what it is, and keeps it, or the reason why it is not kept. */
  async keep(source: Source, organization: string, sha256: string, bytes: Buffer): Promise<KeptFile> {
    const sniffed = sniffFile(bytes);
    if (sniffed.ok) await this.storage.put(originalKey(organization, sha256), bytes);
    const state = moved("pending", sniffed.ok ? "check" : "refuse");
    const [kind, refused] = sniffed.ok ? [sniffed.kind, null] : [null, JSON.stringify(sniffed.refused)];
    const now = this.clock.now();
    await run(source, {
      text: `INSERT INTO evidence_file (id, organization_id, sha256, bytes, state, kind, refused, created_at)
        VALUES ($1, $2, $3, $4, $5, $6, $7, $8) ON CONFLICT (organization_id, sha256) DO NOTHING`,
      values: [this.ids.next(), organization, sha256, bytes.length, state, kind, refused, now],
    });
    const file = await this.find(source, organization, sha256);
    if (file === null) throw new Error("A file is gone that was kept just now.");
    return file;
  }

  /** The file there is of these bytes; where there is none, they are kept now. */
  async keepOnce(source: Source, organization: string, bytes: Buffer): Promise<KeptFile> {
    const sha256 = sha256Hex(bytes);
    return (
      (await this.find(source, organization, sha256)) ??
      (await this.keep(source, organization, sha256, bytes))
    );
  }

  /** Makes what others are shown, or finds that it cannot be made. */
  async prepare(source: Source, file: KeptFile): Promise<void> {
    if (file.state !== "checked") return;
    if (!isPicture(file.kind)) return this.markReady(source, file, null, []);
    const original = await this.storage.read(originalKey(file.organization, file.sha256));
    if (original === null) throw new Error("A kept original is not there.");
    const made = await this.pictures.make(original);
    if (!made.ok) return this.refuse(source, file, made.refused);
    const copies: PictureCopy[] = [];
    for (const { bytes, ...copy } of made.picture.copies) {
      await this.storage.put(copyKey(file.id, copy.size), bytes);
      copies.push({ ...copy, sha256: sha256Hex(bytes) });
    }
    // Before it is ready: killed in between, the whole is done again.
    await this.lookAlikes.note(source, file.id, made.picture);
    await this.markReady(source, file, made.picture, copies);
  }

  private markReady(
    source: Source,
    { id, state }: KeptFile,
    made: Picture | null,
    copies: readonly PictureCopy[],
  ): Promise<void> {
    return run(source, {
      text: `UPDATE evidence_file SET state = $2, capture = $3, width = $4, height = $5, placeholder = $6, copies = $7,
        quality = $8, decided_at = $9 WHERE id = $1 AND state = 'checked'`,
      values: [
        id,
        moved(state, "prepare"),
        made === null ? null : JSON.stringify(made.capture),
        made?.width ?? null,
        made?.height ?? null,
        made?.placeholder ?? null,
        JSON.stringify(copies),
        made === null ? null : JSON.stringify(made.quality),
        this.clock.now(),
      ],
    });
  }

  /** Its bytes go, its reason stays. */
  private async refuse(source: Source, file: KeptFile, refused: StoredRefusal): Promise<void> {
    await run(source, {
      text: `UPDATE evidence_file SET state = $2, refused = $3, decided_at = $4 WHERE id = $1 AND state = 'checked'`,
      values: [file.id, moved(file.state, "refuse"), JSON.stringify(refused), this.clock.now()],
    });
    await this.storage.remove(originalKey(file.organization, file.sha256));
  }
}
