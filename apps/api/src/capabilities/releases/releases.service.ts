import { Injectable } from "@nestjs/common";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import {
  type ReleaseAnswer,
  type ReleaseQuery,
  type ReleaseRequest,
  ReleaseState,
  type ReleasesMade,
} from "@evenhand/shared/http/releases";
import { type ChosenEntry, chooseEntries } from "@evenhand/case/release-choice";
import { RELEASE_STATES } from "@evenhand/case/release-states";
import { decideMove } from "@evenhand/case/state-table";
import { z } from "zod";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { findRow, RevisedBodyRow } from "../../platform/database/rows.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { ComparisonsService, type OrderedComparison } from "../comparisons/index.ts";
import { NoticesService } from "../notices/index.ts";
import { VehiclesService } from "../vehicles/index.ts";
import { nameMatters } from "./name-matters.ts";
import { releaseDetail, releaseList, releaseToLock } from "./releases.queries.ts";

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
    private readonly vehicles: VehiclesService,
    private readonly notices: NoticesService,
    private readonly record: RecordChain,
  ) {}

  async list(actor: Actor, query: ReleaseQuery): Promise<JsonText> {
    const filters = [query.vehicle ?? null, query.comparison ?? null, query.state ?? null];
    return readPage(this.database, {
      name: "release-list",
      text: releaseList,
      values: [
        actor.organizations(),
        readCursor(query),
        query.limit,
        ...filters,
        actor.account,
        this.clock.now(),
      ],
    });
  }

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await findRow(this.database, RevisedBodyRow, {
      name: "release",
      text: releaseDetail,
      values: [actor.organizations(), id, actor.account, this.clock.now()],
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
    const chosen = choose(ordered, entries);
    const there = await tx.release.findMany({
      where: { comparisonId: comparison, entryIndex: { in: entries } },
      select: { id: true, revision: true, entryIndex: true },
    });
    const known = new Map(there.map(({ entryIndex, ...release }) => [entryIndex, release]));
    const made = chosen.filter(({ index }) => !known.has(index));
    for (const one of made) known.set(one.index, await this.store(tx, actor, ordered, one));
    if (made.length > 0) {
      await nameMatters(tx, comparison);
      await this.tellDealer(tx, ordered);
    }
    return { items: entries.map((index) => found(known.get(index), "released item")) };
  }

  /** The dealer accepts or contests. Accepting withdraws the listing until a new statement answers it. */
  async answer(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    { answer, reason }: ReleaseAnswer,
  ): Promise<CreatedDraft> {
    const release = await lockForDealer(tx, actor, id);
    checkRevision(release.revision, meant);
    const moved = decideMove(RELEASE_STATES, release.state, answer, "dealer");
    if (moved.kind === "refused")
      throw new ProblemError("release-state", `It is ${release.state} already; that stands.`);
    const revision = release.revision + 1;
    const data = {
      state: moved.to,
      reason,
      revision,
      answeredBy: actor.account,
      answeredAt: this.clock.now(),
    };
    await tx.release.update({ where: { id }, data });
    this.record.append(tx, {
      kind: "release.moved",
      organizations: [release.buyerId, release.dealerId],
      subject: id,
      actor: actor.account,
      content: { move: answer, state: moved.to, revision },
    });
    if (answer === "accept") await this.vehicles.withdraw(tx, release.vehicleId);
    await this.notices.tell(tx, {
      organization: release.buyerId,
      kind: "release-answered",
      subject: id,
      vehicle: release.vehicleId,
    });
    return { id, revision };
  }

  private async store(
    tx: Transaction,
    actor: Actor,
    ordered: OrderedComparison,
    { index, snapshot }: ChosenEntry,
  ): Promise<CreatedDraft> {
    const id = this.ids.next();
    await tx.release.create({
      data: {
        id,
        comparisonId: ordered.id,
        entryIndex: index,
        vehicleId: ordered.vehicleId,
        buyerId: ordered.buyerId,
        dealerId: ordered.dealerId,
        snapshot,
        state: "released",
        revision: 1,
        releasedBy: actor.account,
        releasedAt: this.clock.now(),
      },
    });
    this.record.append(tx, {
      kind: "release.laid",
      organizations: [ordered.buyerId, ordered.dealerId],
      subject: id,
      actor: actor.account,
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

const LockedRelease = z.object({
  state: ReleaseState,
  revision: z.number(),
  vehicleId: z.string(),
  buyerId: z.string(),
  dealerId: z.string(),
});
type LockedRelease = z.infer<typeof LockedRelease>;

async function lockForDealer(tx: Transaction, actor: Actor, id: string): Promise<LockedRelease> {
  const release = await findRow(tx, LockedRelease, {
    text: releaseToLock,
    values: [actor.organizations(), actor.organizations("dealer"), id],
  });
  return found(release, "released item");
}
