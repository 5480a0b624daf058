import { Injectable } from "@nestjs/common";
import { owedIn } from "@evenhand/case/owed-in";
import { decide, type SettlementDecision, UPHELD } from "@evenhand/case/settlement";
import type { Evidence, Remedy, SettlementActor, SettlementMove } from "@evenhand/shared/settlement";
import type { NewsKind } from "@evenhand/shared/http/notices";
import { Clock } from "../../platform/clock/index.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { NoticesService } from "../notices/index.ts";
import { VehiclesService } from "../vehicles/index.ts";
import type { Line } from "./settlement-rows.ts";
import { briefLooks } from "./look-brief.ts";
import { deadlineIn } from "./working-hours.ts";

/** One press: what is done, by whom, and what is said with it. */
export type Deed = {
  readonly move: SettlementMove;
  readonly actor: SettlementActor;
  readonly account: string | null;
  readonly words: string | null;
  readonly evidence: readonly Evidence[];
  readonly remedy: Remedy | null;
};

/** By the clock or by what is sealed: nothing is said with it. */
export const deedOf = (
  move: SettlementMove,
  actor: "clock" | "seal",
  account: string | null = null,
): Deed => ({
  move,
  actor,
  account,
  words: null,
  evidence: [],
  remedy: null,
});

/** What the record says of photographs: their bytes, by hash. */
const sentWith = (evidence: readonly Evidence[]): { readonly photographs?: readonly string[] } => {
  const photographs = evidence.flatMap((each) => (each.kind === "photograph" ? [each.sha256] : []));
  return photographs.length === 0 ? {} : { photographs };
};

type Moved = Extract<SettlementDecision, { kind: "moved" }>;

/** Writes moves that were decided: the line, its thread, the job that looks at it when it is due, and the news of it. */
@Injectable()
export class SettlementMoves {
  constructor(
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly jobs: Jobs,
    private readonly vehicles: VehiclesService,
    private readonly notices: NoticesService,
    private readonly record: RecordChain,
  ) {}

  decide(line: Line, { move, actor, words, evidence }: Deed): SettlementDecision {
    const { state, deadline } = line;
    const now = this.clock.now().getTime();
    return decide({ state, deadline: deadline?.getTime() ?? null }, move, actor, now, { words, evidence });
  }

  /** Lines of one car, each with what was decided of it. What is upheld withdraws the listing; the others hear of it once. */
  async write(
    tx: Transaction,
    deed: Deed,
    moved: readonly { readonly line: Line; readonly decision: Moved }[],
  ): Promise<void> {
    const press = this.ids.next();
    for (const { line, decision } of moved) await this.writeLine(tx, press, deed, line, decision);
    const [first] = moved;
    if (first === undefined) return;
    if (moved.some(({ decision }) => UPHELD.includes(decision.to)))
      await this.vehicles.withdraw(tx, first.line.vehicleId);
    const again = moved.filter(({ decision }) => decision.to === "looking-again").map(({ line }) => line);
    await briefLooks(tx, again, deed.account ?? first.line.buyerId, this.clock.now());
    await this.tell(
      tx,
      deed,
      first.line,
      moved.map(({ decision }) => decision),
    );
  }

  /** When the hours of a step are over that begins now, with the job that looks then. */
  async due(tx: Transaction, id: string, vehicle: string, hours: number | null): Promise<Date | null> {
    if (hours === null) return null;
    const deadline = await deadlineIn(tx, vehicle, this.clock.now(), hours);
    await this.jobs.enqueue(tx, "settlement", id, deadline);
    return deadline;
  }

  private async writeLine(
    tx: Transaction,
    press: string,
    deed: Deed,
    line: Line,
    { to, hours }: Moved,
  ): Promise<void> {
    const { move, actor, account, words, evidence, remedy } = deed;
    const [at, answers] = [this.clock.now(), move === "accept" || move === "contest"];
    await tx.release.update({
      where: { id: line.id },
      data: {
        state: to,
        revision: line.revision + 1,
        deadline: await this.due(tx, line.id, line.vehicleId, hours),
        ...(UPHELD.includes(to) ? { upheldAt: at } : {}),
        ...(move === "ask" && line.askedAt === null ? { askedAt: at } : {}),
        ...(answers ? { reason: words, answeredBy: account, answeredAt: at } : {}),
      },
      select: { id: true },
    });
    await tx.settlementMove.create({
      data: {
        id: this.ids.next(),
        releaseId: line.id,
        deed: press,
        at,
        actor,
        accountId: account,
        move,
        fromState: line.state,
        toState: to,
        words,
        evidence: evidence.map((each) => ({ ...each })),
        ...(remedy === null ? {} : { remedy }),
      },
    });
    this.record.append(tx, {
      kind: "release.moved",
      organizations: [
        line.buyerId,
        line.dealerId,
        ...(line.askedAt !== null || move === "ask" ? [line.inspectorId] : []),
      ],
      subject: line.id,
      actor: account,
      content: { move, by: actor, state: to, revision: line.revision + 1, ...sentWith(evidence) },
    });
  }

  /** Buyer and dealer each hear of what the other, the inspector or the clock did; the inspector of being asked, and of an end. */
  private async tell(
    tx: Transaction,
    { actor, move }: Deed,
    line: Line,
    to: readonly Moved[],
  ): Promise<void> {
    const ended = to.some(({ to: state }) => owedIn(state) === null);
    const asked = line.askedAt !== null && ended && actor !== "inspector" && actor !== "seal";
    const news: [string, NewsKind, boolean][] = [
      [line.buyerId, actor === "dealer" ? "release-answered" : "settlement-moved", actor !== "buyer"],
      [line.dealerId, "settlement-moved", actor !== "dealer"],
      [line.inspectorId, move === "ask" ? "settlement-asked" : "settlement-moved", move === "ask" || asked],
    ];
    for (const [organization, kind, hears] of news)
      if (hears)
        await this.notices.tell(tx, { organization, kind, subject: line.id, vehicle: line.vehicleId });
  }
}
