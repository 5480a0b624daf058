import type { Remark } from "@evenhand/captions/draft-statement";
import type { Answer } from "@evenhand/shared/answer";
import type { Walkaround } from "./expected.ts";

export type Score = {
  /** Claims proposed, claims there are, and those of both that are the same. */
  readonly proposed: number;
  readonly expected: number;
  readonly right: number;
  readonly firm: number;
  readonly wrong: readonly string[];
  readonly missed: readonly string[];
};

/** An answer as the fixtures write it; faults in the order of their names. */
export const shortAnswer = (answer: Answer): string => {
  switch (answer.kind) {
    case "reading":
      return `${answer.values.map(({ value }) => value).join(" ")} ${answer.unit}`.replace(/ 1$/u, "");
    case "faults": {
      const found = answer.found.map(({ kind, extent }) =>
        extent === undefined ? kind : `${kind}:${extent.value}`,
      );
      const denied = answer.denied === "all" ? ["-all"] : answer.denied.map((kind) => `-${kind}`);
      return [...found.toSorted(), ...denied.toSorted()].join(" ");
    }
    case "choice":
      return answer.option;
    case "grade":
    case "working":
    case "presence":
      return String(answer.value);
    case "code":
      return answer.text;
    case "not-seen":
      return `not-seen:${answer.reason}`;
    case "not-fitted":
      return "not-fitted";
    default:
      return answer.kind;
  }
};

const sorted = (text: string): string => text.split(" ").toSorted().join(" ");

/** Faults are the same in any order; an extent counts where the person wrote one. */
const isSame = (said: string, wanted: string): boolean => {
  const plain = wanted.includes(":") && !wanted.startsWith("not-") ? said : said.replaceAll(/:[\d.]+/gu, "");
  return said === wanted || sorted(plain) === sorted(wanted);
};

const placed = ({ item, position }: { readonly item: string; readonly position: string }): string =>
  position === "" ? item : `${item} ${position}`;

/** A proposed claim is right where the same item at the same place has the same answer in what a person took from the walkaround. */
export const score = ({ remarks }: Walkaround, draft: readonly Remark[]): Score => {
  const wanted = new Map(remarks.map((one) => [`${one.item}@${one.position}`, one]));
  const rightOnes = draft.filter((one) => {
    const want = wanted.get(`${one.item}@${one.position}`);
    return want !== undefined && isSame(shortAnswer(one.answer), want.answer);
  });
  const keys = new Set(rightOnes.map((one) => `${one.item}@${one.position}`));
  return {
    proposed: draft.length,
    expected: remarks.length,
    right: rightOnes.length,
    firm: rightOnes.filter((one) => wanted.get(`${one.item}@${one.position}`)?.firmness === one.firmness)
      .length,
    wrong: draft
      .filter((one) => !rightOnes.includes(one))
      .map(
        (one) =>
          `${one.second} ${placed(one)}: ${shortAnswer(one.answer)} (${wanted.get(`${one.item}@${one.position}`)?.answer ?? "no claim"}) “${one.words}”`,
      ),
    missed: remarks
      .filter((one) => !keys.has(`${one.item}@${one.position}`))
      .map((one) => `${one.second} ${placed(one)}: ${one.answer}`),
  };
};
