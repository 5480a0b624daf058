import type { Actor } from "../../platform/auth/actor.ts";

/** `$1` to `$3` of the queries: all organizations of the person, those that buy, those that deal. */
export const whoOf = (actor: Actor): unknown[] => [
  actor.organizations(),
  actor.organizations("buyer"),
  actor.organizations("dealer"),
];
