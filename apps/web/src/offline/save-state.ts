import type { Change } from "./changes";
import type { KeptFinding } from "./store";

/** How the last try to reach the service ended. */
export type Connection = "sending" | "reached" | "unreachable" | "refused";

/** A change this device could not keep, and when it was made. It stands in the page's memory alone. */
interface Lost {
  readonly nth: number;
  readonly change: Change;
}

/** A change being kept. `null`: which of two stands is being settled, and is seen when it has been. */
interface UnderWay {
  readonly place: string;
  readonly change: Change | null;
}

/** The writes to this device that are under way or failed. Everything said of saving comes from here and from what was kept. */
export interface Writes {
  /** Number of the last write begun. */
  readonly begun: number;
  readonly underWay: ReadonlyMap<number, UnderWay>;
  readonly lost: ReadonlyMap<string, Lost>;
}

export const noWrites: Writes = { begun: 0, underWay: new Map(), lost: new Map() };

export type WriteStep =
  | { readonly type: "began"; readonly nth: number; readonly place: string; readonly change: Change | null }
  | { readonly type: "kept"; readonly nth: number; readonly place: string }
  | { readonly type: "failed"; readonly nth: number; readonly place: string; readonly change: Change };

/** Each write carries all of its place, so one that was kept makes up for every earlier one that was not. */
export const writesAfter = (writes: Writes, step: WriteStep): Writes => {
  if (step.type === "began")
    return {
      ...writes,
      begun: Math.max(writes.begun, step.nth),
      underWay: new Map([...writes.underWay, [step.nth, { place: step.place, change: step.change }]]),
    };
  const underWay = new Map([...writes.underWay].filter(([nth]) => nth !== step.nth));
  const lost = new Map(writes.lost);
  const older = (lost.get(step.place)?.nth ?? 0) < step.nth;
  if (older && step.type === "kept") lost.delete(step.place);
  if (older && step.type === "failed") lost.set(step.place, { nth: step.nth, change: step.change });
  return { ...writes, underWay, lost };
};

/**
 * What was kept, with what could not be kept and what is being kept laid over it: what the person said is what they see, and what
 * everything that follows goes by. Whether it was kept is said by `standingOf` alone.
 */
export const withWrites = (
  report: string,
  findings: ReadonlyMap<string, KeptFinding>,
  { lost, underWay }: Writes,
): ReadonlyMap<string, KeptFinding> => {
  if (lost.size === 0 && underWay.size === 0) return findings;
  const seen = new Map(findings);
  for (const [place, { change }] of lost) {
    const kept = findings.get(place);
    seen.set(place, { report, place, base: null, ...kept, ...change, state: "lost" });
  }
  for (const { place, change } of underWay.values()) {
    if (change === null) continue;
    const kept = seen.get(place);
    const state = kept?.state === "conflict" || kept?.state === "lost" ? kept.state : "waiting";
    const { finding, unread } = change;
    seen.set(place, { report, place, base: null, ...kept, finding, unread, state });
  }
  return seen;
};

export interface Standing {
  readonly keeping: number;
  readonly lost: number;
  readonly waiting: number;
  readonly conflicts: number;
  readonly refused: number;
  /** Places with something typed that cannot be read. */
  readonly unread: number;
  readonly connection: Connection;
}

/**
 * @param findings with what could not be kept and what is being kept laid over them
 * @param gates how many gates whose cautions were read the service does not know of yet
 */
export const standingOf = (
  findings: ReadonlyMap<string, KeptFinding>,
  { underWay }: Writes,
  connection: Connection,
  gates = 0,
): Standing => {
  const all = [...findings.values()];
  const count = (state: KeptFinding["state"]): number => all.filter((one) => one.state === state).length;
  return {
    keeping: underWay.size,
    lost: count("lost"),
    waiting: count("waiting") + gates,
    conflicts: count("conflict"),
    refused: count("refused"),
    unread: all.filter(({ unread }) => unread !== undefined).length,
    connection,
  };
};

export type SaveWord = "not-kept" | "keeping" | "offline" | "sending" | "kept-here" | "rest-saved" | "saved";

/**
 * The one word on where everything stands. `saved` only where each finding was answered by the service and nothing is left to the
 * person.
 */
export const saveWord = (standing: Standing): SaveWord => {
  const { keeping, lost, waiting, conflicts, refused, unread, connection } = standing;
  if (lost > 0) return "not-kept";
  if (keeping > 0) return "keeping";
  if (waiting > 0) {
    if (connection === "unreachable") return "offline";
    return connection === "sending" ? "sending" : "kept-here";
  }
  return conflicts + refused + unread > 0 ? "rest-saved" : "saved";
};

export type SealBlock =
  "nothing-answered" | "keeping" | "lost" | "waiting" | "conflicts" | "refused" | "unread";

/** What keeps a report from being sealed; none of it can be waved through. */
export const sealBlocks = (standing: Standing, answered: number): readonly SealBlock[] => {
  const { keeping, lost, waiting, conflicts, refused, unread } = standing;
  const held: readonly (readonly [SealBlock, boolean])[] = [
    ["nothing-answered", answered === 0],
    ["keeping", keeping > 0],
    ["lost", lost > 0],
    ["waiting", waiting > 0],
    ["conflicts", conflicts > 0],
    ["refused", refused > 0],
    ["unread", unread > 0],
  ];
  return held.flatMap(([block, holds]) => (holds ? [block] : []));
};
