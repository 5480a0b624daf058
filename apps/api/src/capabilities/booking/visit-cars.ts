import { briefOf } from "@evenhand/booking/visit-brief";
import { compiledSheet as sheet } from "@evenhand/record/report-document";
import type { BriefItem } from "@evenhand/shared/booking";
import { Vehicle } from "@evenhand/shared/report";
import { Depth } from "@evenhand/shared/sheet";
import { z } from "zod";
import { lookAgreed } from "../../platform/access/looks-agreed.ts";
import { maySeeVehicle } from "../../platform/access/row-access.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { readRows, type Source } from "../../platform/database/rows.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { siteOfVehicle } from "../sites/index.ts";

export type VisitCar = {
  readonly id: string;
  readonly dealer: string;
  readonly site: string;
  readonly listed: boolean;
  /** Year, make and model. */
  readonly name: string;
  readonly form: Vehicle["form"];
  readonly items: readonly BriefItem[];
  readonly depth: Depth;
  readonly briefRevision: number;
};

const Row = z.object({
  id: z.string(),
  dealer: z.string(),
  site: z.string().nullable(),
  listed: z.boolean(),
  document: Vehicle,
  chosen: z.array(z.string()).nullable(),
  depth: Depth.nullable(),
  revision: z.number().nullable(),
});

/** `$1` organizations, `$2` cars, `$3` the buyer. One that is to be looked at again can be, whether or not it is listed still. */
const carsOf = `
  SELECT v.id, v.organization_id AS dealer, ${siteOfVehicle("v")} AS site,
    (v.listed OR ${lookAgreed("v.id", "$3::uuid")}) AS listed, v.document, b.items AS chosen,
    b.depth, b.revision
  FROM vehicle v LEFT JOIN brief b ON b.vehicle_id = v.id AND b.buyer_id = $3::uuid
  WHERE v.id = ANY($2::uuid[]) AND ${maySeeVehicle("v")}`;

/** The buyer on whose behalf somebody books. */
export const buyerOf = (actor: Actor): string => found(actor.organizations("buyer")[0], "buyer");

export type BriefedCar = Omit<VisitCar, "site"> & { readonly site: string | null };

/** @throws ProblemError `not-found` where a car is not there for the buyer */
export async function readBriefedCars(
  source: Source,
  actor: Actor,
  vehicles: readonly string[],
): Promise<BriefedCar[]> {
  const rows = await readRows(source, Row, {
    text: carsOf,
    values: [actor.organizations(), vehicles, buyerOf(actor)],
  });
  return vehicles.map((id) => {
    const {
      document,
      chosen,
      revision,
      depth: wanted,
      ...row
    } = found(
      rows.find((each) => each.id === id),
      "car",
    );
    const { form, modelYear, make, model } = document;
    const name = `${modelYear} ${make} ${model}`;
    const { depth, items } = briefOf(sheet, form, wanted ?? "half-day", chosen ?? []);
    return { ...row, name, form, depth, items, briefRevision: revision ?? 0 };
  });
}

/** The cars of one visit: at one site, listed. @throws ProblemError where they are not */
export async function readCars(
  source: Source,
  actor: Actor,
  vehicles: readonly string[],
): Promise<[VisitCar, ...VisitCar[]]> {
  const cars = (await readBriefedCars(source, actor, [...new Set(vehicles)])).map(placed);
  const [first, ...rest] = cars;
  if (first === undefined) throw new RangeError("a visit has at least one car");
  const elsewhere = rest.filter(({ site }) => site !== first.site);
  if (elsewhere.length > 0)
    throw new ProblemError(
      "sites-differ",
      "Cars of one visit stand at one site; book the others for themselves.",
      {
        problems: elsewhere.map(({ name }) => ({
          at: "/vehicles",
          reason: `the ${name} stands at another site`,
        })),
      },
    );
  return [first, ...rest];
}

function placed(car: BriefedCar): VisitCar {
  if (!car.listed)
    throw new ProblemError(
      "vehicle-not-listed",
      "The dealer has withdrawn the car; there is nothing to book.",
    );
  if (car.site === null)
    throw new ProblemError("site-missing", "The dealer has not said where the car stands; ask them to.");
  return { ...car, site: car.site };
}
