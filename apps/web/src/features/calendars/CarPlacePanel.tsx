import { Button, NativeSelect } from "@mantine/core";
import { useInfiniteQuery, useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Calendars.module.css";
import { carPlaceQuery, sitesQuery } from "../../entities/calendar/queries";

/** The dealer says at which site a car can be seen. */
export const CarPlacePanel = ({ vehicle }: { readonly vehicle: string }) => {
  const t = useText();
  const queries = useQueryClient();
  const place = useQuery(carPlaceQuery(vehicle));
  const sites = useInfiniteQuery(sitesQuery).data ?? [];
  const [chosen, setChosen] = useState("");
  const now = place.data?.site ?? null;
  const site = chosen === "" ? (now?.id ?? sites[0]?.id ?? "") : chosen;
  const put = useMutation({
    mutationFn: () => call("carPlace.put", { params: { id: vehicle }, body: { site } }),
    onSuccess: (answer) => queries.setQueryData(carPlaceQuery(vehicle).queryKey, answer),
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    put.mutate();
  };
  const error = place.error ?? put.error;
  return (
    <Panel title={t("car-place.title")} hint={t("car-place.hint")}>
      {error !== null && <ProblemNotice error={error} />}
      {place.data !== undefined && (
        <p aria-live="polite">
          {now === null ? t("car-place.none") : t("car-place.is", { name: now.name, address: now.address })}
        </p>
      )}
      {sites.length === 0 ? (
        <div>
          <LinkButton variant="default" to="/sites/new">
            {t("sites.add")}
          </LinkButton>
        </div>
      ) : (
        <form className={styles.fields} onSubmit={submit}>
          <NativeSelect
            size="md"
            label={t("car-place.choose")}
            value={site}
            data={sites.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={(event) => setChosen(event.currentTarget.value)}
          />
          <Button type="submit" variant="default" size="md" loading={put.isPending}>
            {t("car-place.set")}
          </Button>
        </form>
      )}
    </Panel>
  );
};
