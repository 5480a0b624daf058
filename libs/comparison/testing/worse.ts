import type { Answer, AnswerOf, Fault } from "@evenhand/shared/answer";
import { HouseGrade } from "@evenhand/shared/sheet";
import type { Item, ReadingSpec } from "@evenhand/shared/sheet";
import { convert } from "@evenhand/measurement/unit";
import { sheet } from "./small-reports.ts";

const laterThan = <Value>(list: readonly Value[], value: Value): Value[] => {
  const at = list.indexOf(value);
  return at < 0 ? [] : list.slice(at + 1);
};

/** The same readings moved together by whole δ toward the worse. */
const worseReadings = (answer: AnswerOf<"reading">, spec: ReadingSpec): Answer[] => {
  if (spec.betterIs === "target") return [];
  const values = answer.values.map(({ value }) => convert(value, answer.unit, spec.unit));
  const [least, most] = spec.plausible;
  return [0.1, 0.5, 1, 2, 4, 16].flatMap((share): Answer[] => {
    const away = share * Math.max(spec.delta.absolute, spec.delta.share * Math.abs(values[0] ?? 0));
    const moved = values.map((value) => (spec.betterIs === "higher" ? value - away : value + away));
    if (moved.some((value) => value < least || value > most)) return [];
    const written = answer.values.map(({ spot }, index) => ({
      value: convert(moved[index] ?? 0, spec.unit, answer.unit),
      spot,
    }));
    return [{ ...answer, values: written }];
  });
};

/** Options that stand later in an ordered list of which one is true. */
const worseOptions = (
  { option, also = [] }: AnswerOf<"choice">,
  { options, ordered, several }: NonNullable<Item["choice"]>,
): Answer[] => {
  if (also.length > 0 || several === true || !ordered || option === "not-known") return [];
  const known = options.map(({ id }) => id).filter((id) => id !== "not-known");
  return laterThan(known, option).map((id) => ({ kind: "choice", option: id }));
};

const larger = (fault: Fault): Fault[] =>
  fault.extent === undefined
    ? []
    : [2, 5].map((times) => ({
        ...fault,
        extent: { unit: fault.extent?.unit ?? "mm", value: times * (fault.extent?.value ?? 0) },
      }));

/** One fault more, or one of them larger. */
const worseFaults = (answer: AnswerOf<"faults">, item: Item): Answer[] => {
  const free = (item.faults?.kinds ?? []).filter(
    (kind) => answer.denied === "all" || !answer.denied.includes(kind),
  );
  const more = free.map((kind): Answer => ({
    ...answer,
    found: [...answer.found, { kind }],
    denied: answer.denied === "all" ? [] : answer.denied,
  }));
  const grown = answer.found.flatMap((fault, index) =>
    larger(fault).map((each): Answer => ({ ...answer, found: answer.found.with(index, each) })),
  );
  return [...more, ...grown];
};

/** Answers that are worse than one, as anybody would say without a table; none where there is none or nobody could tell. */
export const worseThan = (answer: Answer, item: Item): Answer[] => {
  switch (answer.kind) {
    case "reading":
      return item.reading === undefined ? [] : worseReadings(answer, item.reading);
    case "working":
      return laterThan(
        ["yes", "intermittent", "no"] as const,
        answer.value === "not-known" ? "no" : answer.value,
      ).map((value) => ({ kind: "working", value }));
    case "grade":
      return answer.scale === "house"
        ? HouseGrade.options
            .slice(
              0,
              Math.max(
                0,
                HouseGrade.options.findIndex((grade) => grade === answer.value),
              ),
            )
            .map((value) => ({ kind: "grade", scale: "house", value }))
        : [];
    case "presence": {
      const { goodIs = "neither", onlyIfPromised } = item.presence ?? {};
      if (goodIs === "neither" || onlyIfPromised === true || answer.value !== goodIs) return [];
      return [{ kind: "presence", value: goodIs === "present" ? "absent" : "present" }];
    }
    case "choice":
      return item.choice === undefined ? [] : worseOptions(answer, item.choice);
    case "faults":
      return worseFaults(answer, item);
    default:
      return [];
  }
};

/** An item of the sheet by id. */
export const itemOf = (id: string): Item => {
  const item = sheet.items.get(id)?.item;
  if (item === undefined) throw new Error(`the sheet has no ${id}`);
  return item;
};
