import { Injectable, Logger, type OnModuleInit } from "@nestjs/common";
import { isMoveOf, movesOf, type SettlementRefusal } from "@evenhand/case/settlement";
import type { SettlementLine, SettlementMade, SettlementRequest } from "@evenhand/shared/http/releases";
import type { SettlementActor } from "@evenhand/shared/settlement";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { exists, IdRow, readRows, sql } from "../../platform/database/rows.ts";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { keepNamed } from "./named-pictures.ts";
import { type Deed, deedOf, SettlementMoves } from "./settlement-moves.ts";
import { type Line, lockDue, lockOfCase, lockOne, lockSeen } from "./settlement-rows.ts";

const due = `SELECT id FROM release WHERE deadline <= $1::timestamptz ORDER BY id LIMIT 1000`;

/** Hours a look that is booked has more, when its own are over. */
const MORE_HOURS = 80;

/** Settling lines laid before the dealer: decided by the table under the lock, all lines of one press or none. */
@Injectable()
export class SettlementService implements OnModuleInit {
  private readonly logger = new Logger("settlement");

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly jobs: Jobs,
    private readonly moves: SettlementMoves,
  ) {}

  onModuleInit(): void {
    this.jobs.register("settlement", (id) => this.lookAt(id));
    this.jobs.register("settlement-sweep", async () => void (await this.sweep()));
  }

  async move(tx: Transaction, actor: Actor, request: SettlementRequest): Promise<SettlementMade> {
    const meant = new Map(request.lines.map(({ id, revision }) => [id, revision]));
    const lines = await lockSeen(tx, actor, [...meant.keys()]);
    if (lines.length < meant.size) throw notFound("released item");
    checkTogether(lines);
    const side = sideOf(actor, lines, request);
    const moved = lines.filter(({ id, revision }) => meant.get(id) !== revision);
    if (moved.length > 0)
      throw new ProblemError("release-state", "Somebody moved it meanwhile; read it again.", {
        members: membersOf(moved),
      });
    const deed = deedBy(side, actor, request);
    const decided = lines.map((line) => ({ line, decision: this.moves.decide(line, deed) }));
    const going = decided.flatMap(({ line, decision }) => {
      if (decision.kind === "refused") throw refusalOf(decision.refusal, line, request);
      return [{ line, decision }];
    });
    if (lines[0] !== undefined) await keepNamed(tx, actor, lines[0], request.evidence, this.clock.now());
    await this.moves.write(tx, deed, going);
    return {
      lines: going.map(({ line, decision }) => ({
        id: line.id,
        revision: line.revision + 1,
        state: decision.to,
      })),
    };
  }

  /** Applies what silence came to, where a job has not done it yet: whoever reads what stands in a comparison touches it first. */
  async lapseDue(tx: Transaction, comparison: string): Promise<void> {
    for (const line of await lockDue(tx, comparison, this.clock.now())) await this.lapse(tx, line);
  }

  /** The buyer does not buy: nothing of it is disputed any further, and nobody is held to an answer. */
  async leaveAll(tx: Transaction, account: string, vehicle: string, buyer: string): Promise<void> {
    const deed: Deed = { ...deedOf("leave", "clock"), actor: "buyer", account };
    const decided = (await lockOfCase(tx, vehicle, buyer)).map((line) => ({
      line,
      decision: this.moves.decide(line, deed),
    }));
    const going = decided.flatMap(({ line, decision }) =>
      decision.kind === "moved" ? [{ line, decision }] : [],
    );
    await this.moves.write(tx, deed, going);
  }

  /** Looks at one line: one that is past its deadline is what silence makes of it. */
  async lookAt(id: string): Promise<void> {
    await this.database.transaction(async (tx) => {
      for (const line of await lockOne(tx, id)) await this.lapse(tx, line);
    });
  }

  /**
   * Every line that is due, where a job was lost. One that cannot be looked at is said, and keeps no other from being looked at.
   *
   * @returns how many were due
   */
  async sweep(): Promise<number> {
    const rows = await readRows(this.database, IdRow, { text: due, values: [this.clock.now()] });
    for (const { id } of rows)
      await this.lookAt(id).catch((error: unknown) => {
        this.logger.error(`the released item ${id} is due and could not be looked at: ${String(error)}`);
      });
    return rows.length;
  }

  private async lapse(tx: Transaction, line: Line): Promise<void> {
    const deed = deedOf("lapse", "clock");
    const decision = this.moves.decide(line, deed);
    if (decision.kind === "refused") return;
    if (line.state === "looking-again" && (await isBooked(tx, line))) {
      const deadline = await this.moves.due(tx, line.id, line.vehicleId, MORE_HOURS);
      await tx.release.update({ where: { id: line.id }, data: { deadline }, select: { id: true } });
      return;
    }
    await this.moves.write(tx, deed, [{ line, decision }]);
  }
}

/** A look at the car that the buyer ordered and nobody has ended. */
const isBooked = (tx: Transaction, { vehicleId, buyerId }: Line): Promise<boolean> =>
  exists(
    tx,
    sql`
    SELECT 1 FROM inspection_order WHERE vehicle_id = ${vehicleId}::uuid AND buyer_id = ${buyerId}::uuid
      AND state IN ('ordered', 'accepted')`,
  );

function checkTogether(lines: readonly Line[]): void {
  const cases = new Set(lines.map(({ vehicleId, buyerId }) => `${vehicleId} ${buyerId}`));
  if (cases.size > 1)
    throw new ProblemError("invalid-fields", "Lines that move together are of one car and one buyer.", {
      problems: [{ at: "/lines", reason: "of one case; send the others by themselves" }],
    });
}

/** As whom the person moves them: whoever is more than one of the three as the one that can. What is another's to do is not there. */
function sideOf(actor: Actor, lines: readonly Line[], { move }: SettlementRequest): SettlementActor {
  const sides = (["buyer", "dealer", "inspector"] as const).filter(
    (side) =>
      isMoveOf(move, side) && lines.every((line) => actor.organizations(side).includes(line[`${side}Id`])),
  );
  const able = sides.find((side) => lines.every(({ state }) => movesOf(state, side).includes(move)));
  const [first] = sides;
  if (first === undefined) throw notFound("released item");
  return able ?? first;
}

const deedBy = (side: SettlementActor, { account }: Actor, request: SettlementRequest): Deed => ({
  move: request.move,
  actor: side,
  account,
  words: request.words ?? null,
  evidence: request.evidence,
  remedy: remedyOf(request),
});

function remedyOf({ move, price, remedy }: SettlementRequest): Deed["remedy"] {
  if (price !== undefined) return { kind: "price", off: price };
  if (remedy !== undefined) return { kind: remedy };
  return move === "offer-look" ? { kind: "look" } : null;
}

const lineOf = ({ id, revision, state }: Line): SettlementLine => ({ id, revision, state });
const membersOf = (lines: readonly Line[]) => ({ lines: lines.map(lineOf) });

function refusalOf(refusal: SettlementRefusal, line: Line, { move }: SettlementRequest): ProblemError {
  if (refusal.code === "words-missing")
    return new ProblemError("invalid-fields", "This needs a word of why.", {
      problems: [{ at: "/words", reason: `say why: ${move} is nothing without words` }],
    });
  const { state } = refusal;
  const stands = membersOf([{ ...line, state }]);
  if (refusal.code === "lapsed")
    return new ProblemError("release-state", `The time for an answer is over; it is ${state} now.`, {
      members: stands,
    });
  const can =
    refusal.code === "no-such-move" && refusal.moves.length > 0
      ? ` You can ${refusal.moves.join(", ")}.`
      : "";
  return new ProblemError("release-state", `It is ${state}, where this cannot be done.${can}`, {
    members: stands,
  });
}
