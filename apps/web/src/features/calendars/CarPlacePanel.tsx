import { Button } from "@mantine/core";
import { useInfiniteQuery, useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { ChoiceField } from "../../ui/Fields";
import { LinkButton } from "../../ui/LinkButton";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Calendars.module.css";
import { carPlaceQuery, sitesQuery } from "../../entities/calendar/queries";

/** Where the car stands now, the dealer's sites, and one of them being chosen. */
const useCarPlace = (vehicle: string) => {
  const queries = useQueryClient();
  const place = useQuery(carPlaceQuery(vehicle));
  const sites = useInfiniteQuery(sitesQuery).data ?? [];
  const [chosen, choose] = useState("");
  const site = chosen === "" ? (place.data?.site?.id ?? sites[0]?.id ?? "") : chosen;
  const put = useMutation({
    mutationFn: () => call("carPlace.put", { params: { id: vehicle }, body: { site } }),
    onSuccess: (answer) => queries.setQueryData(carPlaceQuery(vehicle).queryKey, answer),
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    put.mutate();
  };
  return { place, sites, site, choose, put, submit };
};

const NoSite = () => {
  const t = useText();
  return (
    <div>
      <LinkButton variant="default" to="/sites/new">
        {t("sites.add")}
      </LinkButton>
    </div>
  );
};

type Choosing = Pick<ReturnType<typeof useCarPlace>, "sites" | "site" | "choose" | "put" | "submit">;

const ChooseSite = ({ sites, site, choose, put, submit }: Choosing) => {
  const t = useText();
  return (
    <form className={styles.fields} onSubmit={submit}>
      <ChoiceField
        label={t("car-place.choose")}
        value={site}
        data={sites.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={choose}
      />
      <Button type="submit" variant="default" size="md" loading={put.isPending}>
        {t("car-place.set")}
      </Button>
    </form>
  );
};

/** The dealer says at which site a car can be seen. */
export const CarPlacePanel = ({ vehicle }: { readonly vehicle: string }) => {
  const t = useText();
  const { place, ...choosing } = useCarPlace(vehicle);
  const error = place.error ?? choosing.put.error;
  const now = place.data?.site ?? null;
  return (
    <Panel title={t("car-place.title")} hint={t("car-place.hint")}>
      {error !== null && <ProblemNotice error={error} />}
      {place.data !== undefined && (
        <p aria-live="polite">
          {now === null ? t("car-place.none") : t("car-place.is", { name: now.name, address: now.address })}
        </p>
      )}
      {choosing.sites.length === 0 ? <NoSite /> : <ChooseSite {...choosing} />}
    </Panel>
  );
};
