import { type HeldUp, LEAST_CARS } from "@evenhand/comparison/held-up";
import type { DealerRecord, SectionRecord } from "@evenhand/shared/http/records";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";

const places = new Map(sheetVersion1.sections.map(({ id }, place) => [id, place]));
const placeOf = ({ section }: { section: string }): number => places.get(section) ?? places.size;

/** What may be shown of a section: under twenty cars, nothing but how many there are. */
const shown = (row: HeldUp): SectionRecord => {
  const { section, n } = row;
  if (row.state === "too-few") return { section, state: row.state, n, needed: row.needed };
  const { pooled, heldUp, confirmed, cars } = row;
  const { fell, notContradicted, confirmed: confirmedCars } = cars;
  return {
    section,
    state: row.state,
    n,
    pooled,
    heldUp,
    confirmed,
    fell,
    notContradicted,
    confirmedCars,
  };
};

/** One dealer's rows of all that was worked out, in the order of the sheet. */
export const dealerRecord = (
  dealer: DealerRecord["dealer"],
  cars: number,
  rows: readonly HeldUp[],
): DealerRecord => ({
  dealer,
  cars,
  needed: LEAST_CARS,
  sections: rows
    .filter((row) => row.dealer === dealer.id)
    .toSorted((a, b) => placeOf(a) - placeOf(b))
    .map(shown),
});
