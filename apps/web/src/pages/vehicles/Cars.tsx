import { useDebouncedCallback } from "@mantine/hooks";
import { useInfiniteQuery } from "@tanstack/react-query";
import { getRouteApi } from "@tanstack/react-router";
import { useState } from "react";
import { useText } from "../../strings/text";
import { List } from "../../ui/List";
import { Empty, Page, Panel } from "../../ui/Page";
import { SearchField } from "../../ui/SearchField";
import { isKind, useAccount } from "../../entities/account/queries";
import { CarLine } from "../../entities/car/CarLine";
import { carsQuery } from "../../entities/car/queries";
import { LinkButton } from "../../ui/LinkButton";

const route = getRouteApi("/signed-in/cars");

const NoCars = ({ q, deals }: { readonly q: string | undefined; readonly deals: boolean }) => {
  const t = useText();
  if (q !== undefined) return <Empty title={t("cars.none.found", { q })}>{t("cars.none.found.hint")}</Empty>;
  if (!deals) return <Empty title={t("cars.none")}>{t("cars.none.hint")}</Empty>;
  return (
    <Empty title={t("cars.none.dealer")}>
      <p>{t("cars.none.dealer.hint")}</p>
      <LinkButton to="/cars/new">{t("cars.add")}</LinkButton>
    </Empty>
  );
};

/** Cars are searched for once typing pauses; the words stand in the address. */
const CarSearch = ({ q }: { readonly q: string | undefined }) => {
  const t = useText();
  const navigate = route.useNavigate();
  const [typed, setTyped] = useState(q ?? "");
  const send = useDebouncedCallback(
    (text: string) => void navigate({ search: { q: text.trim() || undefined }, replace: true }),
    300,
  );
  const type = (words: string): void => {
    setTyped(words);
    send(words);
  };
  return <SearchField label={t("cars.search")} hint={t("cars.search.hint")} value={typed} onChange={type} />;
};

export const Cars = () => {
  const t = useText();
  const deals = isKind(useAccount(), "dealer");
  const { q } = route.useSearch();
  const cars = useInfiniteQuery(carsQuery(q));
  return (
    <Page
      title={t(deals ? "cars.title.dealer" : "cars.title")}
      under={t(deals ? "cars.what.dealer" : "cars.what")}
      actions={deals ? <LinkButton to="/cars/new">{t("cars.add")}</LinkButton> : undefined}
      narrow
    >
      <CarSearch q={q} />
      <Panel>
        <List
          query={cars}
          keyOf={({ id }) => id}
          renderRow={(car) => <CarLine car={car} />}
          empty={<NoCars q={q} deals={deals} />}
        />
      </Panel>
    </Page>
  );
};
