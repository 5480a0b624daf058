import { Injectable } from "@nestjs/common";
import { FileKind, PictureCopy, PictureMarks, type SealedEvidence } from "@evenhand/shared/evidence";
import { z } from "zod";
import type { Transaction } from "../../platform/database/database.ts";
import { readRows, run } from "../../platform/database/rows.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { chooseCover, markSealed, readyOf, unfinishedOf } from "./evidence.queries.ts";

const NameRow = z.object({ name: z.string() });
const ReadyRow = z.object({
  item: z.string(),
  position: z.string(),
  kind: FileKind,
  sha256: z.string(),
  copies: z.array(PictureCopy),
  marks: PictureMarks,
});

/** What a seal says of a report's files. The report is held. */
@Injectable()
export class EvidenceSealing {
  /**
   * Every file with its place, its hash, the hash of each copy that others are shown, and what is drawn over it.
   *
   * @throws ProblemError `evidence-unfinished` while one is on its way
   */
  async toSeal(tx: Transaction, report: string): Promise<SealedEvidence[]> {
    const waiting = await readRows(tx, NameRow, { text: unfinishedOf, values: [report] });
    if (waiting.length > 0) throw unfinished(waiting.map(({ name }) => name));
    const ready = await readRows(tx, ReadyRow, { text: readyOf, values: [report] });
    return ready.map(({ copies, marks, ...each }) => ({
      ...each,
      copies: copies.map(({ size, sha256 }) => ({ size, sha256 })),
      ...(marks.length > 0 ? { marks } : {}),
    }));
  }

  /** From this version on they stay, and one of a statement's stands for its car. */
  async noteSealed(tx: Transaction, report: string, version: number): Promise<void> {
    await run(tx, { text: markSealed, values: [report, version] });
    await run(tx, { text: chooseCover, values: [report] });
  }
}

const unfinished = (names: readonly string[]) =>
  new ProblemError(
    "evidence-unfinished",
    "Files of this report are still on their way. Wait until each is ready or refused, or take it away; then seal.",
    { problems: names.map((name) => ({ at: "/evidence", reason: name })) },
  );
