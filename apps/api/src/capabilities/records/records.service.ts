import { Injectable } from "@nestjs/common";
import { type DealerFigures, dealerFigures, type InspectedCar } from "@evenhand/record/dealer-figures";
import { lineKey } from "@evenhand/record/line-key";
import type { StatementCounts } from "@evenhand/record/statement-counts";
import { Atom } from "@evenhand/shared/comparison";
import type { DealerRecord } from "@evenhand/shared/http/records";
import { z } from "zod";
import { Database } from "../../platform/database/database.ts";
import { findRow, readRows } from "../../platform/database/rows.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { ComparisonsService } from "../comparisons/index.ts";
import { dealerRecord } from "./dealer-record.ts";
import { dealer, inspectedCars, stateOfCounts } from "./records.queries.ts";

const DealerRow = z.object({ id: z.string(), name: z.string() });
const StateRow = z.object({ state: z.string() });

const SectionCounts = z.object({
  places: z.number(),
  stated: z.number(),
  confirmed: z.number(),
  notContradicted: z.number(),
  falls: z.array(z.object({ line: z.string(), by: z.enum(["figures", "second-look"]).nullable() })),
  statedWorse: z.number(),
}) satisfies z.ZodType<StatementCounts[string]>;
const Car = z.object({
  dealer: z.string(),
  car: z.string(),
  comparison: z.string(),
  counts: z.record(z.string(), SectionCounts).nullable(),
  accepted: z.array(z.object({ item: z.string(), position: z.string(), atom: Atom })),
});
type Car = z.infer<typeof Car>;
type Counted = Car & { counts: StatementCounts };
/** Of all dealers at once, for the others stand beside each. */
type Records = { state: string; cars: ReadonlyMap<string, number>; rows: readonly DealerFigures[] };

const isCounted = (car: Car): car is Counted => car.counts !== null;
/** What a dealer accepted has fallen; what is contested, or not answered, is open. */
const withDecided = ({ dealer: of, counts, accepted }: Counted): InspectedCar => ({
  dealer: of,
  counts,
  decided: new Map(accepted.map((entry) => [lineKey(entry), "fell"])),
});

/** How often a dealer's statements held up in inspections. Nothing of one car, buyer or inspector is in it. */
@Injectable()
export class RecordsService {
  /** Worked out again only when something was compared or counted since: with many dealers it takes a second. */
  private kept: Records | undefined;

  constructor(
    private readonly database: Database,
    private readonly comparisons: ComparisonsService,
  ) {}

  async get(organization: string): Promise<DealerRecord> {
    const row = await findRow(this.database, DealerRow, {
      name: "dealer",
      text: dealer,
      values: [organization],
    });
    const { id, name } = found(row, "dealer");
    const { cars, rows } = await this.records();
    return dealerRecord({ id, name }, cars.get(id) ?? 0, rows);
  }

  private async records(): Promise<Records> {
    const row = await findRow(this.database, StateRow, { text: stateOfCounts });
    const state = row?.state ?? "";
    if (this.kept?.state === state) return this.kept;
    const counted = await this.counted();
    const cars = new Map<string, number>();
    for (const each of counted) cars.set(each.dealer, (cars.get(each.dealer) ?? 0) + 1);
    const rows = dealerFigures(counted.map(withDecided));
    this.kept = { state, cars, rows };
    return this.kept;
  }

  /** Every inspected car with its counts; what has none yet, from before they were kept, is counted first. */
  private async counted(): Promise<readonly Counted[]> {
    const cars = await readRows(this.database, Car, { text: inspectedCars });
    const uncounted = cars.filter((car) => !isCounted(car)).map(({ comparison }) => comparison);
    if (uncounted.length === 0) return cars.filter(isCounted);
    await this.comparisons.count(uncounted);
    return this.counted();
  }
}
