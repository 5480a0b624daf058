import {
  interestBody,
  newInterest,
  type DealingTyped,
  type InterestTyped,
} from "../../../entities/declaration/declarations";
import { replaced, without } from "../../../service/rows";

/** What an inspector declares before accepting a visit. */
export interface Declared {
  readonly interests: readonly InterestTyped[];
  readonly dealings: readonly DealingTyped[];
  readonly independent: boolean;
  /** No two rows of a form share a key, also after one was taken out. */
  readonly lastKey: number;
}

export const nothingDeclared: Declared = { interests: [], dealings: [], independent: false, lastKey: 0 };

export type DeclaredStep =
  | { readonly step: "add-interest"; readonly zone: string }
  | { readonly step: "change-interest"; readonly interest: InterestTyped }
  | { readonly step: "remove-interest"; readonly key: number }
  | { readonly step: "add-dealing"; readonly vehicle: string }
  | { readonly step: "change-dealing"; readonly dealing: DealingTyped }
  | { readonly step: "remove-dealing"; readonly key: number }
  | { readonly step: "independent"; readonly independent: boolean };

const newDealing = (key: number, vehicle: string): DealingTyped => ({
  key,
  vehicle,
  dealing: "repaired",
  note: "",
});

/** What is declared after a step. */
export const declaredAfter = (declared: Declared, step: DeclaredStep): Declared => {
  const { interests, dealings } = declared;
  const key = declared.lastKey + 1;
  switch (step.step) {
    case "add-interest":
      return { ...declared, interests: [...interests, newInterest(key, step.zone)], lastKey: key };
    case "change-interest":
      return { ...declared, interests: replaced(interests, step.interest) };
    case "remove-interest":
      return { ...declared, interests: without(interests, step.key) };
    case "add-dealing":
      return { ...declared, dealings: [...dealings, newDealing(key, step.vehicle)], lastKey: key };
    case "change-dealing":
      return { ...declared, dealings: replaced(dealings, step.dealing) };
    case "remove-dealing":
      return { ...declared, dealings: without(dealings, step.key) };
    case "independent":
      return { ...declared, independent: step.independent };
  }
};

/** As the service takes it; it is sent by one who said to be independent. */
export const declaredBody = ({ interests, dealings }: Declared, zone: string) => ({
  independent: true as const,
  interests: interests.map((one) => interestBody(one, zone)),
  dealings: dealings.map(({ vehicle, dealing, note }) => ({ vehicle, dealing, note })),
});
