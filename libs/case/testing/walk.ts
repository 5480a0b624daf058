import { describe, expect, it } from "vitest";
import { decideMove, hasEnded, type StateTable } from "../src/state-table/index.ts";

/** Moves that a table allows, written down apart from it: state, move, who, to. */
export type Allowed = readonly (readonly [state: string, move: string, actor: string, to: string])[];

/** Every state that can come of these. */
function reach({ first, rows }: StateTable<string, string, string>): Set<string> {
  const reached = new Set(first);
  for (const state of reached) for (const row of rows) if (row.from.includes(state)) reached.add(row.to);
  return reached;
}

/** Who can bring it to an end from this state by moves of their own alone; everybody where it has ended. */
export const whoEnds = (table: StateTable<string, string, string>, state: string): string[] =>
  table.actors.filter((actor) => {
    const own = table.rows.filter(({ actors }) => actors.includes(actor));
    return [...reach({ ...table, first: [state], rows: own })].some((one) => hasEnded(table, one));
  });

const sorted = (all: readonly string[]): string[] => [...new Set(all)].toSorted();

/** What the table must decide, worked out from what is allowed. */
function expectedOf(allowed: Allowed, state: string, move: string, actor: string): object {
  const going = allowed.find(([from, one, who]) => from === state && one === move && who === actor);
  if (going !== undefined) return { kind: "moved", to: going[3] };
  if (!allowed.some(([from]) => from === state))
    return { kind: "refused", refusal: { code: "ended", state } };
  const own = allowed.filter(([from, , who]) => from === state && who === actor);
  const others = allowed.filter(([from, one]) => from === state && one === move);
  const elsewhere = allowed.filter(([, one, who]) => one === move && who === actor);
  const refusal = {
    code: "no-such-move",
    state,
    moves: sorted(own.map(([, one]) => one)),
    actors: sorted(others.map(([, , who]) => who)),
    states: sorted(elsewhere.map(([from]) => from)),
  };
  return { kind: "refused", refusal };
}

/** What the table decides, its lists in one order and without the row. */
function decided(
  table: StateTable<string, string, string>,
  state: string,
  move: string,
  actor: string,
): object {
  const decision = decideMove(table, state, move, actor);
  if (decision.kind === "moved") return { kind: "moved", to: decision.to };
  const { refusal } = decision;
  if (refusal.code === "ended") return decision;
  const { moves, actors, states } = refusal;
  return {
    kind: "refused",
    refusal: { ...refusal, moves: sorted(moves), actors: sorted(actors), states: sorted(states) },
  };
}

/** Walks a table, state × move × actor: what is allowed goes on, everything else is refused and told what would work. */
export function walkTable(table: StateTable<string, string, string>, allowed: Allowed): void {
  const cells = table.states.flatMap((state) =>
    table.moves.flatMap((move) => table.actors.map((actor) => [state, move, actor] as const)),
  );

  describe("every state, move and actor", () => {
    it.each(cells)("%s: %s by %s", (state, move, actor) => {
      expect(decided(table, state, move, actor)).toEqual(expectedOf(allowed, state, move, actor));
    });
  });

  it("names nothing that it does not list, and no cell twice", () => {
    const named = table.rows.flatMap((row) =>
      row.from.flatMap((from) => row.actors.map((actor) => `${from} ${row.move} ${actor}`)),
    );
    expect(new Set(named).size).toBe(named.length);
    for (const { move, from, to, actors } of table.rows) {
      expect([...from, to].every((state) => table.states.includes(state))).toBe(true);
      expect(table.moves.includes(move) && actors.every((one) => table.actors.includes(one))).toBe(true);
    }
  });

  it("reaches every state, and from each something that ends", () => {
    expect([...reach(table)].toSorted()).toEqual(table.states.toSorted());
    for (const state of table.states) {
      const ahead = reach({ ...table, first: [state] });
      expect(
        [...ahead].some(
          (one) =>
            hasEnded(table, one) || table.rows.every(({ from, to }) => !from.includes(one) || to === one),
        ),
      ).toBe(true);
    }
  });
}
