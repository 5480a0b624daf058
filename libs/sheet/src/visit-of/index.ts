import type { VehicleForm } from "@evenhand/shared/report";
import { DEPTHS, STAGES } from "@evenhand/shared/sheet";
import type { Caution, Depth, Item, Sheet, Stage } from "@evenhand/shared/sheet";
import { applicablePlaces } from "../expand/index.ts";

/** Minutes to drive on, set the arms and raise; common practice, no source. */
const LIFT_HANDLING = 5;

/** One stage of a visit: what is looked at, how long it takes one person alone, and what is acknowledged at its gate. */
export type StageOfVisit = {
  readonly stage: Stage;
  readonly minutes: number;
  readonly items: readonly Item[];
  readonly cautions: readonly Caution[];
};

const itemsOf = (sheet: Sheet, form: VehicleForm, depth: Depth): Item[] => {
  const deep = DEPTHS.indexOf(depth);
  const here = new Set(applicablePlaces(sheet, form).map(({ item }) => item));
  return [...here].filter(
    (item) => item.asked !== "statement" && item.sameAs === undefined && DEPTHS.indexOf(item.depth) <= deep,
  );
};

/**
 * A visit to one car by the sheet: its stages in order with their items as one walks round the car, the minutes of one person alone (raising the car
 * included), and the cautions that stand at each stage's gate because one of its items carries them. What only a seller can
 * claim and what another item asks is left out; a stage with nothing to do is too.
 *
 * @param depth how much of the sheet is taken; each depth holds the ones before it
 * @example
 * visitOf(sheetVersion1, coupe, "first-look").map(({ stage }) => stage)[0]; // "cold"
 */
export function visitOf(sheet: Sheet, form: VehicleForm, depth: Depth): StageOfVisit[] {
  const walked = new Map(sheet.places.map(({ id }, index) => [id, index]));
  const at = ({ place = "" }: Item) => walked.get(place) ?? 0;
  const items = itemsOf(sheet, form, depth).toSorted((a, b) => at(a) - at(b));
  return STAGES.map((stage) => {
    const own = items.filter((item) => item.stage === stage);
    const carried = new Set(own.flatMap((item) => item.cautions));
    const raising = stage === "lift" || stage === "second-lift" ? LIFT_HANDLING : 0;
    return {
      stage,
      minutes: own.reduce((sum, { minutes }) => sum + minutes, raising),
      items: own,
      cautions: sheet.cautions.filter(
        ({ id, stages }) => stages?.includes(stage) === true && carried.has(id),
      ),
    };
  }).filter((each) => each.items.length > 0);
}
