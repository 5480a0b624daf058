import { EvidenceState } from "@evenhand/shared/evidence";
import type { Evidence } from "@evenhand/shared/settlement";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { readRows } from "../../platform/database/rows.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { ownPictures } from "./release-pictures.queries.ts";
import type { Line } from "./settlement-rows.ts";

const Row = z.object({ id: z.string(), sha256: z.string(), state: EvidenceState });

/** Why a photograph cannot be named; `null` where it can. */
function wrongWith(row: z.infer<typeof Row> | undefined, sha256: string): string | null {
  if (row === undefined) return "a photograph that you sent to a line of this case";
  if (row.sha256 !== sha256) return "the SHA-256 of the photograph with this id";
  if (row.state === "ready") return null;
  return row.state === "refused"
    ? "a photograph that was taken; this one was refused: take it away"
    : "a photograph that is ready; the service is still looking at this one: send the answer again in a moment";
}

/**
 * Holds the photographs a move names against what its sender sent to lines of the case, and keeps them from then on.
 *
 * @throws ProblemError `invalid-fields` naming each that is not there, not ready, or not the one that was meant
 */
export async function keepNamed(
  tx: Transaction,
  actor: Actor,
  { vehicleId, buyerId }: Pick<Line, "vehicleId" | "buyerId">,
  evidence: readonly Evidence[],
  now: Date,
): Promise<void> {
  const named = evidence.flatMap((each, at) => (each.kind === "photograph" ? [{ ...each, at }] : []));
  if (named.length === 0) return;
  const ids = named.map(({ id }) => id);
  const values = [actor.organizations(), ids, vehicleId, buyerId];
  const own = new Map((await readRows(tx, Row, { text: ownPictures, values })).map((row) => [row.id, row]));
  const problems = named.flatMap(({ id, sha256, at }) => {
    const reason = wrongWith(own.get(id), sha256);
    return reason === null ? [] : [{ at: `/evidence/${String(at)}`, reason }];
  });
  if (problems.length > 0)
    throw new ProblemError("invalid-fields", "A photograph cannot be sent with it; each is named.", {
      problems,
    });
  await tx.releasePicture.updateMany({ where: { id: { in: ids }, sentAt: null }, data: { sentAt: now } });
}
