import { randomUUID } from "node:crypto";
import { setTimeout as wait } from "node:timers/promises";
import type { ChosenOffer } from "@evenhand/shared/http/booking";
import type { RouteId } from "@evenhand/shared/access";
import type { Asked, Person } from "../../api/setup/person.ts";
import { horn, setOperation } from "../../api/setup/story.ts";

type Body = Readonly<Record<string, unknown>>;
type Answered = { readonly status: number; readonly body: Body };

/** Asks until there is a clear answer: what broke off, or was refused because something was away, is asked again as it was. */
async function askUntilAnswered(person: Person, route: RouteId, asked: Asked): Promise<Answered> {
  const same = { key: randomUUID(), ...asked };
  for (;;) {
    const answer = await person.ask(route, same).catch((error: unknown) => {
      if (error instanceof Error && /ECONN|EPIPE|hang up/.test(error.message)) return null;
      throw error;
    });
    const running = answer?.status === 409 && String(answer.body.type).endsWith("/request-in-progress");
    if (answer !== null && answer.status < 500 && !running)
      return { status: answer.status, body: answer.body };
    await wait(50);
  }
}

function expectStatus(answer: Answered, ...allowed: readonly number[]): Body {
  if (allowed.includes(answer.status)) return answer.body;
  throw new Error(`answered with ${String(answer.status)}: ${JSON.stringify(answer.body)}`);
}

/** What was acknowledged, and nothing else. */
export type Kept = {
  operations: string[];
  findingRevision: number;
  holds: string[];
  summaries: string[];
  decisions: string[];
};
export const nothingKept = (): Kept => ({
  operations: [],
  findingRevision: 0,
  holds: [],
  summaries: [],
  decisions: [],
});

export type Scene = {
  readonly dealer: Person;
  readonly buyer: Person;
  /** A draft whose horn is written over and over. */
  readonly draft: string;
  readonly vehicle: string;
  readonly offers: readonly ChosenOffer[];
  readonly comparison: string;
};

const horns = ["yes", "no", "intermittent"] as const;

/** One change of one finding on top of the one before. */
async function writeFinding({ dealer, draft }: Scene, kept: Kept): Promise<void> {
  const value = horns[kept.findingRevision % horns.length] ?? "yes";
  const operation = setOperation(horn(value), kept.findingRevision === 0 ? null : kept.findingRevision);
  const asked = { path: { id: draft }, body: { operations: [operation] } };
  const { results } = expectStatus(await askUntilAnswered(dealer, "reports.operate", asked), 200);
  const [result] = Array.isArray(results) ? results : [];
  if (!["applied", "duplicate"].includes(result?.result)) throw new Error(JSON.stringify(results));
  kept.operations.push(operation.id);
  kept.findingRevision = Number(result.revision);
}

/** An hour is held and given back. */
async function holdAndCancel({ buyer, vehicle, offers }: Scene, kept: Kept): Promise<void> {
  const offer = offers[kept.holds.length % offers.length];
  const holding = { body: { vehicles: [vehicle], offer } };
  const { id } = expectStatus(await askUntilAnswered(buyer, "appointments.hold", holding), 201);
  kept.holds.push(String(id));
  const cancelling = { path: { id: String(id) }, revision: 1, body: { cause: "buyer-withdrew" } };
  expectStatus(await askUntilAnswered(buyer, "appointments.cancel", cancelling), 201);
}

/** A summary is made, and the car declined on it. */
async function decide({ buyer, comparison }: Scene, kept: Kept): Promise<void> {
  const making = { path: { id: comparison }, body: {} };
  const made = expectStatus(await askUntilAnswered(buyer, "summaries.create", making), 201);
  kept.summaries.push(String(made["id"]));
  const body = { decision: "decline", hash: made["hash"], acknowledgements: [] };
  const deciding = { path: { id: String(made["id"]) }, body };
  const { id } = expectStatus(await askUntilAnswered(buyer, "summaries.decide", deciding), 201);
  kept.decisions.push(String(id));
}

export type Writing = {
  readonly kept: Kept;
  /** Waits until everybody has had something acknowledged that was not yet when this was asked. */
  readonly goesOn: () => Promise<void>;
  /** Lets everybody end what they have begun. */
  readonly stop: () => Promise<void>;
};

/** Three who write without a pause, each one thing after the other. */
export function startWriting(scene: Scene): Writing {
  const kept = nothingKept();
  const stopping = new AbortController();
  const failures: unknown[] = [];
  const repeat = async (work: (scene: Scene, kept: Kept) => Promise<void>): Promise<void> => {
    try {
      while (!stopping.signal.aborted) await work(scene, kept);
    } catch (error) {
      failures.push(error);
    }
  };
  const writers = [writeFinding, holdAndCancel, decide].map(repeat);
  const counts = () => [kept.operations.length, kept.holds.length, kept.decisions.length];
  const checkFailures = (): void => {
    if (failures.length > 0) throw failures[0];
  };
  return {
    kept,
    goesOn: async () => {
      const before = counts();
      while (!counts().every((count, who) => count > (before[who] ?? 0))) {
        checkFailures();
        await wait(20);
      }
    },
    stop: async () => {
      stopping.abort();
      await Promise.all(writers);
      checkFailures();
    },
  };
}
