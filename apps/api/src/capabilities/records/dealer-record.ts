import { LEAST_CARS } from "@evenhand/record/car-share";
import type { DealerFigures } from "@evenhand/record/dealer-figures";
import type { DealerRecord, RecordFigures } from "@evenhand/shared/http/records";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";

const places = new Map(sheetVersion1.sections.map(({ id }, place) => [id, place]));
const placeOf = ({ section }: { section: string }): number => places.get(section) ?? places.size;

/** Without whose it is. */
const shown = ({ dealer: _dealer, section: _section, ...figures }: DealerFigures): RecordFigures => figures;

/** One dealer's rows of all that was worked out, in the order of the sheet. */
export const dealerRecord = (
  dealer: DealerRecord["dealer"],
  cars: number,
  all: readonly DealerFigures[],
): DealerRecord => {
  const rows = all.filter((row) => row.dealer === dealer.id);
  const whole = rows.find(({ section }) => section === null);
  return {
    dealer,
    cars,
    needed: LEAST_CARS,
    whole: whole === undefined ? { state: "too-few", cars: 0 } : shown(whole),
    sections: rows
      .flatMap((row) =>
        row.section === null || row.cars === 0 ? [] : { section: row.section, figures: shown(row) },
      )
      .toSorted((a, b) => placeOf(a) - placeOf(b)),
  };
};
