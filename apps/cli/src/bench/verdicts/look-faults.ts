import type { AnswerOf, Fault } from "@evenhand/shared/answer";
import type { FaultKind, Item, Sheet } from "@evenhand/shared/sheet";
import { toleranceAt } from "@evenhand/sheet/reading-side";
import type { Draws } from "./draws.ts";
import type { Person } from "./people.ts";
import { faultOf } from "./true-car.ts";

const kindOf = ({ faultKinds }: Sheet, id: string): FaultKind | undefined =>
  faultKinds.find((kind) => kind.id === id);

const isFound = ({ kind, extent }: Fault, { rates }: Person, sheet: Sheet, draws: Draws): boolean => {
  const times = (extent?.value ?? 0) / (kindOf(sheet, kind)?.delta.absolute ?? 1);
  const [large, middling, trifle] = rates.findsFault;
  return draws.chance(times >= 2 ? large : times >= 1 ? middling : trifle);
};

/** A kind of the same family that the item lists, or the kind itself. */
const takenFor = (kind: string, item: Item, sheet: Sheet, draws: Draws): string => {
  const family = kindOf(sheet, kind)?.family;
  const others = (item.faults?.kinds ?? []).filter(
    (other) => other !== kind && kindOf(sheet, other)?.family === family,
  );
  return others.length === 0 ? kind : draws.pick(others);
};

/** A cell beside it on the drawing. */
const beside = (spot: string, item: Item, { drawings }: Sheet, draws: Draws): string => {
  const cells = drawings.find(({ id }) => id === item.faults?.drawing)?.cells ?? [];
  const here = cells.find(({ id }) => id === spot);
  if (here === undefined) return spot;
  const distance = (cell: (typeof cells)[number]): number => Math.hypot(cell.x - here.x, cell.y - here.y);
  const others = cells.filter(({ id }) => id !== spot).sort((one, other) => distance(one) - distance(other));
  return others.length === 0 ? spot : draws.pick(others.slice(0, 2)).id;
};

const noted = (fault: Fault, item: Item, { rates, noise }: Person, sheet: Sheet, draws: Draws): Fault => {
  const kind = draws.chance(rates.otherKind) ? takenFor(fault.kind, item, sheet, draws) : fault.kind;
  const spot =
    fault.spot !== undefined && draws.chance(rates.otherSpot)
      ? beside(fault.spot, item, sheet, draws)
      : fault.spot;
  const eye = kindOf(sheet, fault.kind)?.byEye;
  const size = fault.extent?.value ?? 0;
  // A stated accuracy is a half-width: its standard deviation is by √3 smaller.
  const scatter = (noise * (eye === undefined ? 0 : toleranceAt(eye, size))) / Math.sqrt(3);
  const read = Math.max(1, Math.round(size + scatter * draws.normal()));
  return {
    kind,
    ...(fault.extent === undefined ? {} : { extent: { ...fault.extent, value: read } }),
    ...(spot === undefined ? {} : { spot }),
  };
};

/** What one person notes of the faults of a place: some are missed, taken for another kind, or put down beside where they are. */
export const faultsSeen = (
  item: Item,
  found: readonly Fault[],
  person: Person,
  sheet: Sheet,
  draws: Draws,
): AnswerOf<"faults"> => {
  const seen = found
    .filter((fault) => isFound(fault, person, sheet, draws))
    .map((fault) => noted(fault, item, person, sheet, draws));
  const kinds = item.faults?.kinds ?? [];
  const ghost = draws.chance(person.rates.seesGhost)
    ? [faultOf(item, draws.pick(kinds), 0.5, sheet, draws)]
    : [];
  const all = [...seen, ...ghost];
  const none = new Set(all.map(({ kind }) => kind));
  return {
    kind: "faults",
    found: all,
    denied: all.length === 0 ? "all" : kinds.filter((kind) => !none.has(kind)),
  };
};
