import type { RouteId } from "@evenhand/shared/access";
import type { Asked, Person } from "../../api/setup/person.ts";

/** One press of somebody's. */
export type Press = { readonly who: Person; readonly route: RouteId; readonly asked: Asked };

/** A move, and what there is once it is done: rows added by table, `0` where one is changed. */
export type Move = {
  readonly name: string;
  /** Where it is killed in every run, if it is. */
  readonly short?: "commit" | "committed";
  readonly press: () => Promise<Press>;
  readonly rows: Readonly<Record<string, number>>;
  /** What a repeat after all is done is answered with; 201 where not said. */
  readonly repeat?: number;
  /** What a repeat adds by table; nothing where not said. */
  readonly again?: Readonly<Record<string, number>>;
  /** How it stands, as a party or the database says. */
  readonly stands: () => Promise<string>;
  /** And is to stand once it is done. */
  readonly leaves: string;
};

export type Job = { readonly queue: string; readonly id: string };

/** A move the clock makes, by a job. */
export type ClockMove = Omit<Move, "press" | "short" | "repeat" | "again"> & {
  /** Makes it due. */
  readonly due: () => Promise<Job>;
  /** What its transaction asks for. */
  readonly about: RegExp;
};

export type Step = Move | ClockMove;
