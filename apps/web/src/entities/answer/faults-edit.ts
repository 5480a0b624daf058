import type { AnswerOf, Fault } from "@evenhand/shared/answer";
import { withExtentText, withoutFault } from "./fault-texts";

type Denied = AnswerOf<"faults">["denied"];

/** What is said of the faults at a place: those found, those said not to be there, and extents typed that cannot be read. */
export interface FaultsSaid {
  readonly found: readonly Fault[];
  readonly denied: Denied;
  readonly texts: Readonly<Record<string, string>>;
}

export type FaultsStep =
  | { readonly type: "none"; readonly none: boolean }
  | { readonly type: "add"; readonly kind: string }
  | {
      readonly type: "change";
      readonly at: number;
      readonly fault: Fault;
      readonly text: string | undefined;
    }
  | { readonly type: "remove"; readonly at: number }
  | { readonly type: "deny"; readonly kind: string; readonly denied: boolean };

/** "None at all" cannot stand beside a fault. */
const besideFaults = (denied: Denied): readonly string[] => (denied === "all" ? [] : denied);

/** What is said after a step. */
export const faultsAfter = (said: FaultsSaid, step: FaultsStep): FaultsSaid => {
  const { found, denied, texts } = said;
  const rest = besideFaults(denied);
  switch (step.type) {
    case "none":
      return { ...said, denied: step.none ? "all" : [] };
    case "add":
      return {
        ...said,
        found: [...found, { kind: step.kind }],
        denied: rest.filter((one) => one !== step.kind),
      };
    case "change":
      return {
        found: found.map((one, at) => (at === step.at ? step.fault : one)),
        denied: [...rest],
        texts: withExtentText(texts, step.at, step.text),
      };
    case "remove":
      return {
        ...said,
        found: found.filter((_, at) => at !== step.at),
        texts: withoutFault(texts, step.at),
      };
    case "deny": {
      const others = rest.filter((one) => one !== step.kind);
      return { ...said, denied: step.denied ? [...others, step.kind] : others };
    }
  }
};

/** The answer of it: where nothing is said there is none. */
export const faultsAnswer = ({ found, denied }: FaultsSaid): AnswerOf<"faults"> | null =>
  found.length === 0 && denied !== "all" && denied.length === 0
    ? null
    : { kind: "faults", found: [...found], denied };
