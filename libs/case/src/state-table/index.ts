/** One kind of move: from where, to where, and who makes it. */
export type StateRow<State extends string, Move extends string, Actor extends string> = {
  readonly move: Move;
  readonly from: readonly State[];
  readonly to: State;
  readonly actors: readonly Actor[];
};

/** Everything that can happen to a thing. What is in no row is refused. At most one row for a state, a move and an actor. */
export type StateTable<
  State extends string,
  Move extends string,
  Actor extends string,
  Row extends StateRow<State, Move, Actor> = StateRow<State, Move, Actor>,
> = {
  readonly states: readonly State[];
  readonly moves: readonly Move[];
  readonly actors: readonly Actor[];
  /** In which it begins. */
  readonly first: readonly State[];
  readonly rows: readonly Row[];
};

export type StateRefusal<State extends string, Move extends string, Actor extends string> =
  /** It is over: nobody can do anything with it any more. */
  | { readonly code: "ended"; readonly state: State }
  /** Not this move, by this actor, in this state. */
  | {
      readonly code: "no-such-move";
      readonly state: State;
      /** Moves this actor can make now. */
      readonly moves: readonly Move[];
      /** Who can make this move now. */
      readonly actors: readonly Actor[];
      /** States in which this actor can make this move. */
      readonly states: readonly State[];
    };

export type StateDecision<State extends string, Move extends string, Actor extends string, Row> =
  | { readonly kind: "moved"; readonly to: State; readonly row: Row }
  | { readonly kind: "refused"; readonly refusal: StateRefusal<State, Move, Actor> };

/** Can nobody move it any more? */
export const hasEnded = <State extends string>(
  { rows }: { readonly rows: readonly { readonly from: readonly State[] }[] },
  state: State,
): boolean => !rows.some(({ from }) => from.includes(state));

/** What would work where a move does not. */
function whatWouldWork<State extends string, Move extends string, Actor extends string>(
  table: StateTable<State, Move, Actor>,
  state: State,
  move: Move,
  actor: Actor,
): StateRefusal<State, Move, Actor> {
  if (hasEnded(table, state)) return { code: "ended", state };
  const here = table.rows.filter(({ from }) => from.includes(state));
  const own = table.rows.filter((row) => row.move === move && row.actors.includes(actor));
  return {
    code: "no-such-move",
    state,
    moves: [...new Set(here.filter(({ actors }) => actors.includes(actor)).map((row) => row.move))],
    actors: [...new Set(here.filter((row) => row.move === move).flatMap(({ actors }) => actors))],
    states: [...new Set(own.flatMap(({ from }) => from))],
  };
}

/**
 * Decides a move by its table: the state after it with the row that allows it, or a refusal that says what would work. Conditions
 * that hang on more than the state are judged by whoever reads the row.
 *
 * @example
 * const door: StateTable<"open" | "shut", "close", "porter"> = {
 *   states: ["open", "shut"], moves: ["close"], actors: ["porter"], first: ["open"],
 *   rows: [{ move: "close", from: ["open"], to: "shut", actors: ["porter"] }],
 * };
 * decideMove(door, "open", "close", "porter").kind // "moved"
 * decideMove(door, "shut", "close", "porter") // { kind: "refused", refusal: { code: "ended", state: "shut" } }
 */
export function decideMove<
  State extends string,
  Move extends string,
  Actor extends string,
  Row extends StateRow<State, Move, Actor>,
>(
  table: StateTable<State, Move, Actor, Row>,
  state: State,
  move: Move,
  actor: Actor,
): StateDecision<State, Move, Actor, Row> {
  const row = table.rows.find(
    (each) => each.move === move && each.from.includes(state) && each.actors.includes(actor),
  );
  if (row !== undefined) return { kind: "moved", to: row.to, row };
  return { kind: "refused", refusal: whatWouldWork(table, state, move, actor) };
}
