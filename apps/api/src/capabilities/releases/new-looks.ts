import { Injectable } from "@nestjs/common";
import { laidAtSeal, newLook, type NewLook } from "@evenhand/case/new-look";
import { chooseEntries } from "@evenhand/case/release-choice";
import { snapshotOf } from "@evenhand/case/release-snapshot";
import { z } from "zod";
import type { Transaction } from "../../platform/database/database.ts";
import { findRow, sql } from "../../platform/database/rows.ts";
import { ComparisonsService, type OrderedComparison } from "../comparisons/index.ts";
import { ReleasesService } from "./releases.service.ts";
import { deedOf, SettlementMoves } from "./settlement-moves.ts";
import { type Line, lockOfCase } from "./settlement-rows.ts";

type Found = { readonly line: Line; readonly look: NewLook };
const Allowed = z.object({ by: z.string() });

/** Settling, when an inspection is sealed anew: what was revised or looked at again ends by what stands in the new comparison. */
@Injectable()
export class NewLooks {
  constructor(
    private readonly comparisons: ComparisonsService,
    private readonly releases: ReleasesService,
    private readonly moves: SettlementMoves,
  ) {}

  /** @param account who sealed it */
  async noteSealed(tx: Transaction, comparison: string, account: string): Promise<void> {
    const sealed = await this.comparisons.readMade(tx, comparison);
    const lines = await lockOfCase(tx, sealed.vehicleId, sealed.buyerId);
    const found = lines.flatMap((line): Found[] => {
      const look = speaksOf(line, sealed) ? newLook(line.entry, sealed.comparison) : null;
      return look === null ? [] : [{ line, look }];
    });
    await standAnew(tx, sealed, found);
    for (const says of ["uphold", "clear", "leave"] as const)
      await this.end(tx, sealed, account, says, found);
    await this.layAtSeal(tx, sealed);
  }

  private async end(
    tx: Transaction,
    sealed: OrderedComparison,
    account: string,
    says: NewLook["says"],
    found: readonly Found[],
  ): Promise<void> {
    const deed = deedOf(says, "seal", account);
    const decided = found
      .filter(({ look }) => look.says === says)
      .map(({ line, look }) => ({ line, look, decision: this.moves.decide(line, deed) }));
    const going = decided.flatMap(({ line, look, decision }) =>
      decision.kind === "moved" ? [{ line, look, decision }] : [],
    );
    for (const { line, look } of going) {
      const shown = snapshotOf(sealed.comparison, look.index, sealed.a, sealed.b);
      if (shown === null) continue;
      const looked = { entry: shown.entry, b: shown.b };
      await tx.release.update({ where: { id: line.id }, data: { looked }, select: { id: true } });
    }
    await this.moves.write(tx, deed, going);
  }

  /** Where the buyer lets the dealer answer first, what was plainly found worse goes before the dealer at once. */
  private async layAtSeal(tx: Transaction, sealed: OrderedComparison): Promise<void> {
    const allowed = await findRow(
      tx,
      Allowed,
      sql`
      SELECT lays_at_seal_by AS by FROM buyer_case WHERE vehicle_id = ${sealed.vehicleId}::uuid
        AND buyer_id = ${sealed.buyerId}::uuid AND lays_at_seal_by IS NOT NULL`,
    );
    if (allowed === null) return;
    await this.releases.lay(
      tx,
      allowed.by,
      sealed,
      chooseEntries(sealed, laidAtSeal(sealed.comparison)).chosen,
    );
  }
}

/** The firm's own finding, newly sealed; or whoever looked again. */
const speaksOf = (line: Line, { inspectorId }: OrderedComparison): boolean =>
  line.inspectorId === inspectorId || line.state === "looking-again";

/** The line stands in the new comparison from now on; of two that speak of one entry there the later. */
async function standAnew(tx: Transaction, { id }: OrderedComparison, found: readonly Found[]): Promise<void> {
  const newest = new Map(found.map(({ line, look }) => [look.index, line.id]));
  for (const [atEntryIndex, release] of newest)
    await tx.release.update({
      where: { id: release },
      data: { atComparisonId: id, atEntryIndex },
      select: { id: true },
    });
}
