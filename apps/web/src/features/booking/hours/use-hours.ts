import type { OfferBody } from "@evenhand/shared/booking";
import type { Offers } from "@evenhand/shared/http/booking";
import { useInfiniteQuery, useQuery } from "@tanstack/react-query";
import { getRouteApi } from "@tanstack/react-router";
import { offersQuery, termsQuery } from "../../../entities/appointment/queries";
import { ownZone, today } from "../../../entities/time/zone-time";
import type { HoursSearch } from "../search";
import { hoursAfter, otherCars, wishOf, type HoursChoice } from "./hours-choice";
import { useTaking } from "./use-taking";

const route = getRouteApi("/signed-in/cars/$vehicle/hours");
/** As many as the service gives at once: an inspector's day alone has some twenty starts. */
const PAGE = 100;

export type Inspector = Offers["inspectors"][number];

/** What the service offers, of all pages read so far. */
export interface Found extends Pick<Offers, "site" | "dealer" | "zone" | "plan"> {
  readonly offers: readonly OfferBody[];
  readonly inspectors: ReadonlyMap<string, Inspector>;
}

const foundOf = (pages: readonly Offers[]): Found | undefined => {
  const [first] = pages;
  if (first === undefined) return undefined;
  const { site, dealer, zone, plan } = first;
  return {
    site,
    dealer,
    zone,
    plan,
    offers: pages.flatMap((page) => page.offers),
    inspectors: new Map(pages.flatMap((page) => page.inspectors).map((one) => [one.id, one])),
  };
};

const useFound = (vehicle: string, search: HoursSearch) => {
  const day = search.from ?? today(ownZone());
  const query = useInfiniteQuery(offersQuery(vehicle, wishOf(search, day), PAGE));
  return { day, query, found: foundOf(query.data?.pages ?? []) };
};

/** The hours of a car: what is looked for, what is found, which of them is open, and the taking of one. */
export const useHours = (vehicle: string) => {
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const take = useTaking([vehicle, ...otherCars(search)], search.moving);
  const terms = useQuery(termsQuery).data?.terms;
  const choose = (choice: HoursChoice): void =>
    void navigate({ search: (before) => hoursAfter(before, choice), replace: true, resetScroll: false });
  const open = (offer: OfferBody): void => {
    take.reset();
    choose({ choose: "offer", offer: offer.id });
  };
  return { search, choose, open, take, terms, ...useFound(vehicle, search) };
};

export type Hours = ReturnType<typeof useHours>;
