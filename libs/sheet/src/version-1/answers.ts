import type { Call, Severity } from "@evenhand/shared/severity";
import type { Item, Words } from "@evenhand/shared/sheet";
import { words } from "./draft.ts";
import type { ChoiceDraft, FaultsDraft, GradeDraft, PresenceDraft, WorkingDraft } from "./draft.ts";

/** Good where no call is given; `bad` is bad as grave as its item is by default. */
type OptionDraft = [
  id: string,
  named: string | Words,
  call?: Call | "bad",
  at?: NonNullable<ChoiceDraft["options"][number]["at"]>,
];

const option = ([id, named, call = "good", at]: OptionDraft) => ({
  id,
  words: typeof named === "string" ? words(named) : named,
  call,
  ...(at === undefined ? {} : { at }),
});

const notKnown = option(["not-known", "not known", "no-yardstick"]);

/** Options from the most claimed to the least; `not-known` follows by itself. */
export function ranked(...options: OptionDraft[]): ChoiceDraft {
  return { options: [...options.map(option), notKnown], ordered: true };
}

/** The same where two careful people may well call one thing by neighboring options: neither contradicts the other. */
export const rankedLoosely = (...options: OptionDraft[]): ChoiceDraft => ({
  ...ranked(...options),
  neighbors: "consistent",
});

/** Options none of which claims more than another; `not-known` follows by itself. */
export function unranked(...options: OptionDraft[]): ChoiceDraft {
  return { options: [...options.map(option), notKnown], ordered: false };
}

/** Wear in the house grades; bad from heavy wear down. */
export const wear: GradeDraft = { badFrom: "heavy-wear" };

export const works: WorkingDraft = {};
export const shouldBePresent: PresenceDraft = { goodIs: "present" };
/** A paper: a fault only where the statement promised it. */
export const ifPromised: PresenceDraft = { goodIs: "present", onlyIfPromised: true };
export const shouldBeAbsent: PresenceDraft = { goodIs: "absent" };
/** The same, with what the two are called. */
export const shouldNotBe = (present: string, absent: string): PresenceDraft => ({
  ...shouldBeAbsent,
  said: { present: words(present), absent: words(absent) },
});

export function code(system: NonNullable<Item["code"]>["system"]): NonNullable<Item["code"]> {
  return { system };
}

/** Kinds asked for, the drawing their spots lie on, and how grave they are where the kind alone does not say. */
export function faults(
  kinds: string[],
  drawing?: string,
  severities?: NonNullable<FaultsDraft["severities"]>,
): FaultsDraft {
  return {
    kinds,
    ...(drawing === undefined ? {} : { drawing }),
    ...(severities === undefined ? {} : { severities }),
  };
}

/** How much of a part's history is claimed: the top claims the car's own part, the last nothing at all. */
export const howOriginal: ChoiceDraft = {
  ...ranked(
    ["original-to-car", words("original to the car", undefined, ["matching numbers", "numbers matching"])],
    ["right-type-and-date", words("right type and date", undefined, ["date-correct", "date code correct"])],
    ["right-type", words("right type", undefined, ["period-correct", "correct type"]), "no-yardstick"],
    ["other-type", words("other type", undefined, ["replacement of another type", "swapped"]), "worth"],
  ),
  weakerIsNotOtherwise: true,
};

const leakOf = (weep: Severity, drip: Severity, run: Severity, at: Partial<Record<string, Severity>> = {}) =>
  ranked(
    ["none", "none"],
    ["weep", words("weep", undefined, ["seep", "damp"]), weep, at],
    ["drip", words("drip", undefined, ["dripping"]), drip, at],
    ["run", words("run", undefined, ["running leak"]), run, at],
  );

/** A leak by how much claims it dry: oil, coolant. */
export const leak = leakOf("small", "repair", "repair");
/** A leak at several places: of fuel or brake fluid any is a danger. */
export const leakBySource = leakOf("small", "repair", "repair", {
  "brake-hydraulics": "danger",
  fuel: "danger",
});
/** Brake fluid: any leak is a danger. */
export const brakeLeak = leakOf("danger", "danger", "danger");
