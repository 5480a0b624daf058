import { dimensionOf } from "@evenhand/measurement/unit";
import type { AnswerOf, Fault } from "@evenhand/shared/answer";
import type { FieldProblem } from "@evenhand/shared/problem";
import { oneOf, problemAt, quote } from "./context.ts";
import type { CompiledItem, Place } from "./context.ts";

type Faults = AnswerOf<"faults">;

function faultProblems(fault: Fault, index: number, compiled: CompiledItem, place: Place): FieldProblem[] {
  const at = (field: string, reason: string) => problemAt(place, ["answer", "found", index, field], reason);
  const kind = compiled.faultKinds.get(fault.kind);
  const problems: FieldProblem[] = [];
  if (kind === undefined) {
    problems.push(
      at(
        "kind",
        `${place.name} has no fault ${quote(fault.kind)}: name ${oneOf([...compiled.faultKinds.keys()])}.`,
      ),
    );
  } else if (fault.extent !== undefined && dimensionOf(fault.extent.unit) !== dimensionOf(kind.unit)) {
    problems.push(
      at(
        "extent",
        `The extent of ${kind.words.american} is a ${dimensionOf(kind.unit)}: write it in ${kind.unit}, not in ${fault.extent.unit}.`,
      ),
    );
  }
  if (fault.spot !== undefined && compiled.drawing === undefined) {
    problems.push(at("spot", `${place.name} has no drawing: leave the spot out, and say where in the note.`));
  } else if (fault.spot !== undefined && compiled.drawing?.cellOrder.has(fault.spot) === false) {
    problems.push(
      at(
        "spot",
        `The drawing of ${place.name} has no spot ${quote(fault.spot)}: name ${oneOf([...compiled.drawing.cellOrder.keys()])}.`,
      ),
    );
  }
  return problems;
}

function denialProblems({ found, denied }: Faults, compiled: CompiledItem, place: Place): FieldProblem[] {
  const at = (path: PropertyKey[], reason: string) => problemAt(place, ["answer", "denied", ...path], reason);
  if (denied === "all") {
    return found.length === 0
      ? []
      : [at([], `Faults are found and "none at all" is said: take one of the two away.`)];
  }
  return denied.flatMap((kind, index) => {
    if (!compiled.faultKinds.has(kind)) {
      return [
        at(
          [index],
          `${place.name} has no fault ${quote(kind)}: name ${oneOf([...compiled.faultKinds.keys()])}.`,
        ),
      ];
    }
    return found.some((fault) => fault.kind === kind)
      ? [
          at(
            [index],
            `“${compiled.faultKinds.get(kind)?.words.american ?? kind}” is both found and denied: take one of the two away.`,
          ),
        ]
      : [];
  });
}

export function faultsProblems(answer: Faults, compiled: CompiledItem, place: Place): FieldProblem[] {
  if (answer.found.length === 0 && answer.denied.length === 0) {
    return [
      problemAt(
        place,
        ["answer"],
        `Neither a fault nor that there is none is said: name one, deny kinds, or deny "all".`,
      ),
    ];
  }
  return [
    ...answer.found.flatMap((fault, index) => faultProblems(fault, index, compiled, place)),
    ...denialProblems(answer, compiled, place),
  ];
}
