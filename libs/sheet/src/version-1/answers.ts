import type { Call } from "@evenhand/shared/severity";
import type { Item, Words } from "@evenhand/shared/sheet";
import { words } from "./draft.ts";
import type { ChoiceDraft, FaultsDraft, GradeDraft, PresenceDraft, WorkingDraft } from "./draft.ts";

/** Good where no call is given; `bad` is bad as grave as its item is by default. */
type OptionDraft = [id: string, named: string | Words, call?: Call | "bad"];

const option = ([id, named, call = "good"]: OptionDraft) => ({
  id,
  words: typeof named === "string" ? words(named) : named,
  call,
});

const notKnown = option(["not-known", "not known", "no-yardstick"]);

/** Options from the most claimed to the least; `not-known` follows by itself. */
export function ranked(...options: OptionDraft[]): ChoiceDraft {
  return { options: [...options.map(option), notKnown], ordered: true };
}

/** Options none of which claims more than another; `not-known` follows by itself. */
export function unranked(...options: OptionDraft[]): ChoiceDraft {
  return { options: [...options.map(option), notKnown], ordered: false };
}

/** Wear in the house grades; bad from heavy wear down. */
export const wear: GradeDraft = { badFrom: "heavy-wear" };

export const works: WorkingDraft = {};
export const shouldBePresent: PresenceDraft = { goodIs: "present" };
export const shouldBeAbsent: PresenceDraft = { goodIs: "absent" };

export function code(system: NonNullable<Item["code"]>["system"]): NonNullable<Item["code"]> {
  return { system };
}

export function faults(kinds: string[], drawing?: string): FaultsDraft {
  return drawing === undefined ? { kinds } : { kinds, drawing };
}

/** How much of a part's history is claimed: the top claims the car's own part, the last nothing at all. */
export const howOriginal = ranked(
  ["original-to-car", words("original to the car", undefined, ["matching numbers", "numbers matching"])],
  ["right-type-and-date", words("right type and date", undefined, ["date-correct", "date code correct"])],
  ["right-type", words("right type", undefined, ["period-correct", "correct type"])],
  ["other-type", words("other type", undefined, ["replacement of another type", "swapped"])],
);

/** A leak by how much claims it dry. */
export const leak = ranked(
  ["none", "none"],
  ["weep", words("weep", undefined, ["seep", "damp"])],
  ["drip", words("drip", undefined, ["dripping"]), "bad"],
  ["run", words("run", undefined, ["running leak"]), "bad"],
);
