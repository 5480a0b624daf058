import { dimensionOf } from "@evenhand/measurement/unit";
import type { FirmInstrument, FirmInstruments } from "@evenhand/shared/http/instruments";
import type { FieldProblem } from "@evenhand/shared/problem";
import type { Instrument, Quantity } from "@evenhand/shared/report";
import type { InstrumentKind } from "../instrument-kinds/index.ts";

type Part = { readonly at: string; readonly words: string; readonly quantity: Quantity };

const partsOf = ({ resolution, accuracy }: FirmInstrument, at: string): Part[] => [
  ...(resolution === undefined
    ? []
    : [{ at: `${at}/resolution`, words: "smallest step", quantity: resolution }]),
  ...(accuracy?.absolute === undefined
    ? []
    : [{ at: `${at}/accuracy/absolute`, words: "accuracy", quantity: accuracy.absolute }]),
];

function partProblems({ at, words, quantity: { value, unit } }: Part, kind: InstrumentKind): FieldProblem[] {
  const problems: FieldProblem[] = [];
  if (value <= 0)
    problems.push({
      at: `${at}/value`,
      reason: `The ${words} must be more than 0; leave it out where it is not known.`,
    });
  if (!kind.dimensions.includes(dimensionOf(unit)))
    problems.push({
      at: `${at}/unit`,
      reason: `A ${kind.name} measures ${kind.dimensions.join(" or ")}, and ${unit} is a unit of ${dimensionOf(unit)}: write the ${words} in ${kind.units.join(", ")}, or choose another kind.`,
    });
  return problems;
}

/**
 * Everything that is wrong with a firm's list: an id given twice, a kind the sheet measures with nowhere, a figure of 0 or less, a
 * figure in a unit its kind does not measure in.
 *
 * @returns one problem a field, in the order of the list, each with its JSON pointer and what would work; empty where all hold
 */
export const firmInstrumentProblems = (
  { instruments }: FirmInstruments,
  kinds: readonly InstrumentKind[],
): FieldProblem[] =>
  instruments.flatMap((instrument, index) => {
    const at = `/instruments/${index}`;
    const first = instruments.findIndex(({ id }) => id === instrument.id);
    const twice =
      first === index
        ? []
        : [{ at: `${at}/id`, reason: `Instrument ${first} has this id already: give each its own.` }];
    const kind = kinds.find(({ name }) => name === instrument.kind);
    if (kind !== undefined)
      return [...twice, ...partsOf(instrument, at).flatMap((part) => partProblems(part, kind))];
    const names = kinds.map(({ name }) => name).join(", ");
    return [
      ...twice,
      { at: `${at}/kind`, reason: `The sheet measures with no such thing. Write one of: ${names}.` },
    ];
  });

/** Those that are not retired, as a report names them. */
export const instrumentsInUse = ({ instruments }: Pick<FirmInstruments, "instruments">): Instrument[] =>
  instruments.flatMap(({ retired, ...instrument }) => (retired ? [] : [instrument]));
