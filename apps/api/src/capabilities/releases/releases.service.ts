import { Injectable } from "@nestjs/common";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import { type ReleaseQuery, type ReleaseRequest, type ReleasesMade } from "@evenhand/shared/http/releases";
import { type ChosenEntry, chooseEntries } from "@evenhand/case/release-choice";
import { owedIn } from "@evenhand/case/owed-in";
import { findNoted, NotedRevisedBodyRow, readNotedPage } from "../../platform/access/exposure.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { readCursor } from "../../platform/database/page.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { ComparisonsService, type OrderedComparison } from "../comparisons/index.ts";
import { NoticesService } from "../notices/index.ts";
import { nameMatters } from "./name-matters.ts";
import { SettlementMoves } from "./settlement-moves.ts";
import { SettlementService } from "./settlement.service.ts";
import { releaseDetail, releaseList } from "./releases.queries.ts";

const reasons = {
  "found-better": "it was found better than stated",
  "nothing-to-dispute": "the two do not dispute it",
  "no-such-entry": "the comparison has no such entry",
} as const;

@Injectable()
export class ReleasesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly comparisons: ComparisonsService,
    private readonly settlement: SettlementService,
    private readonly moves: SettlementMoves,
    private readonly notices: NoticesService,
    private readonly record: RecordChain,
  ) {}

  async list(actor: Actor, query: ReleaseQuery): Promise<JsonText> {
    const filters = [query.vehicle ?? null, query.comparison ?? null, query.state ?? null];
    return readNotedPage(this.database, {
      name: "release-list",
      read: releaseList,
      values: [actor.organizations(), readCursor(query), query.limit, ...filters, actor.account],
      now: this.clock.now(),
    });
  }

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await findNoted(this.database, NotedRevisedBodyRow, {
      name: "release",
      read: releaseDetail,
      values: [actor.organizations(), id, actor.account],
      now: this.clock.now(),
    });
    const { body, revision } = found(row, "released item");
    return new JsonText(body, String(revision));
  }

  /** The buyer lays entries before the dealer; one that lies there already stays as it is. */
  async create(
    tx: Transaction,
    actor: Actor,
    comparison: string,
    { entries }: ReleaseRequest,
  ): Promise<ReleasesMade> {
    const ordered = await this.comparisons.lockOrdered(tx, actor, comparison);
    await this.settlement.lapseDue(tx, comparison);
    const known = await this.lay(tx, actor.account, ordered, choose(ordered, entries));
    return { items: entries.map((index) => found(known.get(index), "released item")) };
  }

  /** Lays entries that were chosen before the dealer, where they do not lie there already. */
  async lay(
    tx: Transaction,
    account: string,
    ordered: OrderedComparison,
    chosen: readonly ChosenEntry[],
  ): Promise<Map<number, CreatedDraft>> {
    const there = await tx.release.findMany({
      where: { atComparisonId: ordered.id, atEntryIndex: { in: chosen.map(({ index }) => index) } },
      select: { id: true, revision: true, atEntryIndex: true },
    });
    const known = new Map(there.map(({ atEntryIndex, ...release }) => [atEntryIndex, release]));
    const made = chosen.filter(({ index }) => !known.has(index));
    for (const one of made) known.set(one.index, await this.store(tx, account, ordered, one));
    if (made.length > 0) {
      await nameMatters(tx, ordered.id);
      await this.tellDealer(tx, ordered);
    }
    return known;
  }

  private async store(
    tx: Transaction,
    account: string,
    ordered: OrderedComparison,
    { index, snapshot }: ChosenEntry,
  ): Promise<CreatedDraft> {
    const id = this.ids.next();
    const hours = owedIn("released")?.hours ?? null;
    const deadline = await this.moves.due(tx, id, ordered.vehicleId, hours);
    await tx.release.create({
      data: {
        id,
        comparisonId: ordered.id,
        entryIndex: index,
        atComparisonId: ordered.id,
        atEntryIndex: index,
        vehicleId: ordered.vehicleId,
        buyerId: ordered.buyerId,
        dealerId: ordered.dealerId,
        inspectorId: ordered.inspectorId,
        snapshot,
        state: "released",
        deadline,
        revision: 1,
        releasedBy: account,
        releasedAt: this.clock.now(),
      },
    });
    this.record.append(tx, {
      kind: "release.laid",
      organizations: [ordered.buyerId, ordered.dealerId],
      subject: id,
      actor: account,
      content: { comparison: ordered.id, entry: index, state: "released" },
    });
    return { id, revision: 1 };
  }

  private async tellDealer(tx: Transaction, { id, dealerId, vehicleId }: OrderedComparison): Promise<void> {
    await this.notices.tell(tx, {
      organization: dealerId,
      kind: "items-released",
      subject: id,
      vehicle: vehicleId,
    });
  }
}

/** @throws ProblemError `entry-not-releasable` naming every entry that cannot be released */
function choose(ordered: OrderedComparison, entries: readonly number[]): readonly ChosenEntry[] {
  const { chosen, refused } = chooseEntries(ordered, entries);
  if (refused.length === 0) return chosen;
  throw new ProblemError(
    "entry-not-releasable",
    "Some of these cannot be laid before the dealer; each is named.",
    { problems: refused.map(({ place, why }) => ({ at: `/entries/${place}`, reason: reasons[why] })) },
  );
}
