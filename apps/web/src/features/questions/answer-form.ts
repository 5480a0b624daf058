import type { Answer } from "@evenhand/shared/answer";
import type { Finding, FindingInput } from "@evenhand/shared/finding";
import type { Unread } from "../../offline/store";

/** What an answer may rest on, what is likeliest first. */
export const bases = [
  "seen",
  "measured",
  "felt",
  "documented",
  "told",
] as const satisfies readonly Finding["basis"][];

/** The dealer's answer as it is typed. */
export interface AnswerForm {
  readonly answer: Answer | null;
  /** What was typed and makes no answer yet. */
  readonly unread: Unread | undefined;
  readonly firmness: Finding["firmness"];
  readonly basis: Finding["basis"];
  readonly note: string;
  /** Sealed and published at once, in a new version of the statement. */
  readonly seal: boolean;
}

export const begunAnswer: AnswerForm = {
  answer: null,
  unread: undefined,
  firmness: "asserted",
  basis: "seen",
  note: "",
  seal: true,
};

/** An answer is there, and all that was typed is part of it. */
export const mayBeGiven = ({ answer, unread }: AnswerForm): boolean =>
  answer !== null && unread === undefined;

interface AskedPlace {
  readonly item: string;
  readonly position: string;
}

/** The finding that the answer is: on the place asked about, with a note where one was written. */
export const answerFinding = (
  { item, position }: AskedPlace,
  { answer, firmness, basis, note }: AnswerForm,
): Omit<FindingInput, "answer"> & { readonly answer: Answer | null } => ({
  item,
  position,
  answer,
  firmness,
  basis,
  ...(note.trim() === "" ? {} : { note: note.trim() }),
});
