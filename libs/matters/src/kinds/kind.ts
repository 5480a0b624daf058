import { defineMessages } from "@evenhand/message/define-messages";
import type { NextStep } from "@evenhand/shared/matter";
import type { Severity } from "@evenhand/shared/severity";

/** Kinds of one family are folded into one where a car has more matters than anybody can hold in mind. */
export type Family =
  | "papers"
  | "numbers"
  | "identity"
  | "body"
  | "chassis"
  | "engine"
  | "driveline"
  | "electrics"
  | "cabin"
  | "unknown"
  | "rest"
  | "small";

export type Kind = {
  readonly id: string;
  readonly family: Family;
  /** How it is called where many are listed. */
  readonly name: string;
  /**
   * Items (`brakes.hoses`), one place of an item (`driveline.lines@fuel-line`) or whole sections (`brakes`); the narrowest that
   * names a line takes it.
   */
  readonly members: readonly string[];
  /** Rules of the handbook whose broken claims belong to it, whatever item they were made at. */
  readonly rules: readonly string[];
  /** What the headline opens with, by how grave what was found is; the next milder one where there is none. */
  readonly says: Partial<Record<Severity, string>>;
  /** What would decide it. */
  readonly decides: string;
  /** The question to the dealer. */
  readonly ask: string;
  /** Where it is not what follows from how grave it is. */
  readonly step?: NextStep | undefined;
};

export type KindDraft = Omit<Kind, "id" | "family" | "name" | "members" | "rules"> & {
  readonly rules?: readonly string[];
};

/** A kind of matter, its words in the catalog; common practice, no source. */
export const kind = (
  id: string,
  family: Family,
  name: string,
  members: readonly string[],
  draft: KindDraft,
): Kind => {
  const { says, decides, ask } = draft;
  defineMessages(`matter.${id}`, { ...says, name, decides, ask });
  // All in one shape, which lines are joined by fast.
  return { id, family, name, members, rules: draft.rules ?? [], says, decides, ask, step: draft.step };
};
