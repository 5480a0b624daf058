import { HAND_OVER_STATES } from "@evenhand/case/hand-over-states";
import { decideMove } from "@evenhand/case/state-table";
import type { HandOverStage } from "@evenhand/shared/http/hand-overs";
import { hashSecret } from "../../platform/auth/secret.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { findRow, IdRow, type Source } from "../../platform/database/rows.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { carriedHandOver, lockedHandOver } from "./hand-overs.queries.ts";
import { stateProblem } from "./state-problem.ts";
import { StoredHandOver } from "./stored.ts";

/** The move that signing each report is. */
export const MOVES = { collection: "collect", delivery: "deliver" } as const;

const spent = (): ProblemError =>
  new ProblemError(
    "hand-over-link-spent",
    "The link was used for both reports, has run out, was replaced, or never was. Ask the buyer for a new one.",
  );

/** What the link opens: while it holds and there is something left to sign. @throws ProblemError `hand-over-link-spent` */
export async function openByLink(source: Source, secret: string, now: Date): Promise<StoredHandOver> {
  const row = await findRow(source, StoredHandOver, {
    name: "carried-hand-over",
    text: carriedHandOver,
    values: [Buffer.from(hashSecret(secret)), now],
  });
  if (row === null) throw spent();
  return row;
}

/** By its link, held till the transaction ends: also where it was signed meanwhile, so that a repeat gets the first answer. */
export async function holdByLink(tx: Transaction, secret: string, now: Date): Promise<StoredHandOver> {
  const row = await findRow(tx, IdRow, {
    text: `SELECT id FROM hand_over WHERE token_hash = $1 AND link_expires_at > $2 FOR UPDATE`,
    values: [Buffer.from(hashSecret(secret)), now],
  });
  if (row === null) throw spent();
  return readHeld(tx, row.id);
}

/** As it stands now, to whoever holds it. */
export async function readHeld(tx: Transaction, id: string): Promise<StoredHandOver> {
  const row = await findRow(tx, StoredHandOver, { text: lockedHandOver, values: [id] });
  return found(row, "hand-over");
}

/** Is this the report that is to be signed next? @throws ProblemError `hand-over-state` */
export function checkStage(
  { state }: Pick<StoredHandOver, "state">,
  { stage }: { readonly stage: HandOverStage },
): void {
  if (decideMove(HAND_OVER_STATES, state, MOVES[stage], "carrier").kind === "refused")
    throw stateProblem(state);
}
