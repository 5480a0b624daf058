import { Button } from "@mantine/core";
import type { OfferBody } from "@evenhand/shared/booking";
import { problemCodeOf } from "@evenhand/shared/http/problem-codes";
import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useInfiniteQuery, useQuery } from "@tanstack/react-query";
import { getRouteApi } from "@tanstack/react-router";
import { Refusal } from "../../service/refusal";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Empty, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useTimes } from "../../entities/time/use-times";
import { addDays, mondayOf, ownZone, today } from "../../entities/time/zone-time";
import styles from "./Booking.module.css";
import { HoursControls } from "./HoursControls";
import { LostHour } from "./LostHour";
import { OfferList } from "./OfferList";
import { OfferPanel } from "./OfferPanel";
import { OfferWeek } from "./OfferWeek";
import { offersQuery, termsQuery, type OfferWish } from "../../entities/appointment/queries";
import { useTaking } from "./use-taking";
import { WhyNot } from "./WhyNot";

const route = getRouteApi("/signed-in/cars/$vehicle/hours");
const LIST_DAYS = 30;
/** As many as the service gives at once: an inspector's day alone has some twenty starts. */
const PAGE = 100;

/** The days asked for: the week of the date, or a month from it. */
const daysOf = (view: "week" | undefined, from: string) => {
  if (view === undefined) return { from, until: addDays(from, LIST_DAYS - 1) };
  const monday = mondayOf(from);
  return { from: monday, until: addDays(monday, 6) };
};

const OffersRefused = ({ error }: { readonly error: unknown }) => {
  const t = useText();
  const missing = error instanceof Refusal && problemCodeOf(error.problem.type) === "site-missing";
  if (!missing) return <ProblemNotice error={error} />;
  return (
    <Notice kind="refusal" title={t("hours.site.missing")}>
      <p>{t("hours.site.missing.what")}</p>
    </Notice>
  );
};

const useOffers = (vehicle: string) => {
  const { view, from, skill, with: cars, moving } = route.useSearch();
  const first = from ?? today(ownZone());
  const wish: OfferWish = { ...daysOf(view, first), with: cars, skills: skill, moving };
  const query = useInfiniteQuery(offersQuery(vehicle, wish, PAGE));
  const pages = query.data?.pages ?? [];
  const inspectors = new Map(pages.flatMap((page) => page.inspectors).map((one) => [one.id, one]));
  return {
    query,
    wish,
    first,
    page: pages[0],
    offers: pages.flatMap((page) => page.offers),
    inspectors: [...inspectors.values()],
  };
};

/** Hours as a list or as a week, one of them open beside it with cost, independence and terms. */
export const HoursPanel = ({ car }: { readonly car: VehicleDetail }) => {
  const t = useText();
  const times = useTimes();
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const { query, wish, first, page, offers, inspectors } = useOffers(car.id);
  const terms = useQuery(termsQuery).data?.terms;
  const cars = [car.id, ...(search.with?.split(",") ?? [])];
  const take = useTaking(cars, search.moving);
  const set = (next: Partial<typeof search>): void =>
    void navigate({ search: (before) => ({ ...before, ...next }), replace: true, resetScroll: false });
  const open = (offer: OfferBody): void => {
    take.reset();
    set({ offer: offer.id });
  };
  const chosen = offers.find(({ id }) => id === search.offer);
  const narrowed = { with: wish.with, skills: wish.skills, moving: wish.moving };
  const shown = {
    offers,
    inspectors,
    zone: page?.zone ?? "UTC",
    open: search.offer,
    onOpen: open,
  };
  const refusal =
    take.error === null ? null : (
      <LostHour
        error={take.error}
        zone={shown.zone}
        currency={offers[0]?.cost.total.currency}
        onTake={(offer) => {
          open(offer);
          take.mutate(offer);
        }}
      />
    );
  return (
    <>
      <div className={styles.columns}>
        <div className={styles.stack}>
          <Panel>
            <HoursControls car={car} search={search} from={first} onChange={set} />
            {query.error !== null && <OffersRefused error={query.error} />}
            {query.isPending && <Loading />}
            {page !== undefined && offers.length > 0 && (
              <p className={styles.hint}>
                {t("hours.shown", {
                  site: page.site.name,
                  name: times.zoneName(offers[0]?.start ?? "", page.zone),
                  zone: page.zone.replaceAll("_", " "),
                })}{" "}
                {t(search.view === undefined ? "hours.list.order" : "hours.week.count")}
              </p>
            )}
            {page !== undefined && offers.length === 0 && (
              <Empty title={t("hours.none")}>
                <p>{t("hours.none.hint")}</p>
                <Button variant="default" onClick={() => set({ why: first })}>
                  {t("hours.none.why", { day: times.date(first) })}
                </Button>
              </Empty>
            )}
            {offers.length > 0 && search.view === undefined && <OfferList {...shown} />}
            {page !== undefined && search.view === "week" && offers.length > 0 && (
              <OfferWeek {...shown} week={wish.from} onWhy={(why) => set({ why })} />
            )}
            {query.hasNextPage && (
              <div className={styles.buttons}>
                {search.view === "week" && <p className={styles.hint}>{t("hours.week.more")}</p>}
                <Button
                  variant="default"
                  loading={query.isFetchingNextPage}
                  onClick={() => void query.fetchNextPage()}
                >
                  {t("list.more")}
                </Button>
              </div>
            )}
          </Panel>
          {search.why !== undefined && (
            <WhyNot
              vehicle={car.id}
              date={search.why}
              wish={narrowed}
              onClose={() => set({ why: undefined })}
            />
          )}
        </div>
        <div className={styles.stack}>
          {chosen !== undefined && page !== undefined ? (
            <OfferPanel
              key={chosen.start}
              offer={chosen}
              same={offers.filter(({ start }) => start === chosen.start)}
              offers={page}
              inspectors={inspectors}
              terms={terms}
              moving={search.moving !== undefined}
              pending={take.isPending}
              refusal={refusal}
              onOpen={open}
              onTake={(offer) => take.mutate(offer)}
            />
          ) : (
            <Panel title={t("offer.title")}>
              {refusal}
              <p className={styles.hint}>{t("offer.none")}</p>
            </Panel>
          )}
        </div>
      </div>
    </>
  );
};
