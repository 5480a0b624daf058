import type { OdometerReading } from "../odometer/index.ts";
import { estimateOf, findReads, noteDay } from "../view/index.ts";
import type { Read, View } from "../view/index.ts";

/** A reading of the miles with the finding it is from. */
export type MilesRead = { readonly read: Read<"reading">; readonly reading: OdometerReading };

/** What papers with a date have. */
export const paperEntries = (view: View): MilesRead[] =>
  findReads(view, "reading", "identity.odometer-on-papers").flatMap((read) => {
    const [miles, day] = [estimateOf(view, read), noteDay(read.finding.conditions?.["entry-date"])];
    return miles === undefined || day === undefined
      ? []
      : [
          {
            read,
            reading: {
              day,
              miles,
              place: read.position === "" ? "papers" : read.position.replaceAll("-", " "),
            },
          },
        ];
  });
