import { Button } from "@mantine/core";
import type { ListingSeen } from "@evenhand/shared/http/publishing";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useState } from "react";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { dotted } from "../../ui/dotted";
import { RefusedPage } from "../../ui/Failed";
import { LongTextField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { LinkButton } from "../../ui/LinkButton";
import { Line } from "../../ui/List";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Empty, Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { CarPlacePanel } from "../../features/calendars/CarPlacePanel";
import { useItemWords } from "../../entities/sheet/item-words";
import { useCarName } from "../../entities/car/CarName";
import { carQuery } from "../../entities/car/queries";
import styles from "../../features/publishing/Publishing.module.css";
import { listingQuery } from "../../features/publishing/queries";
import { ShareLinks } from "../../features/publishing/ShareLinks";

const route = getRouteApi("/signed-in/cars/$vehicle/listing");

interface Props {
  readonly listing: ListingSeen;
}

const useChanged = (vehicle: string) => {
  const queries = useQueryClient();
  return async (): Promise<void> => {
    await queries.invalidateQueries({ queryKey: ["listing", vehicle] });
    await queries.invalidateQueries({ queryKey: ["vehicle", vehicle] });
    await queries.invalidateQueries({ queryKey: ["vehicles"] });
  };
};

/** What keeps the car from being published, and what would answer it. */
const OpenFaults = ({ listing }: Props) => {
  const t = useText();
  const intl = useIntl();
  const words = useItemWords();
  if (listing.openFaults.length === 0) return null;
  return (
    <Notice kind="refusal" title={t("listing.faults", { count: listing.openFaults.length })}>
      <ul>
        {listing.openFaults.map((fault) => (
          <li key={fault.release}>
            {t("listing.fault", {
              item: words(fault),
              since: intl.formatDate(fault.since, { dateStyle: "long" }),
            })}
          </li>
        ))}
      </ul>
      <p>{t("listing.faults.what")}</p>
      <div>
        <LinkButton variant="default" to="/cars/$vehicle" params={{ vehicle: listing.vehicle }}>
          {t("listing.to-car")}
        </LinkButton>
      </div>
    </Notice>
  );
};

const Publish = ({ listing }: Props) => {
  const t = useText();
  const changed = useChanged(listing.vehicle);
  const publish = useMutation({
    mutationFn: () =>
      call("listing.publish", { params: { id: listing.vehicle }, ifMatch: listing.revision, body: {} }),
    onSettled: changed,
  });
  return (
    <>
      {publish.error !== null && <ProblemNotice error={publish.error} />}
      <p className={styles.hint}>{t("listing.publish.what")}</p>
      <div>
        <Button loading={publish.isPending} onClick={() => publish.mutate()}>
          {t("listing.publish")}
        </Button>
      </div>
    </>
  );
};

const useWithdraw = ({ listing }: Props) => {
  const changed = useChanged(listing.vehicle);
  return useMutation({
    mutationFn: (reason: string) =>
      call("listing.withdraw", {
        params: { id: listing.vehicle },
        ifMatch: listing.revision,
        body: { reason: reason.trim() },
      }),
    onSettled: changed,
  });
};

const Withdraw = ({ listing }: Props) => {
  const t = useText();
  const withdraw = useWithdraw({ listing });
  const [reason, setReason] = useState("");
  const isSilent = reason.trim() === "";
  return (
    <Panel title={t("listing.withdraw.title")} hint={t("listing.withdraw.what")}>
      <Form error={withdraw.error} onSubmit={() => withdraw.mutate(reason)}>
        <LongTextField
          maxLength={500}
          label={t("listing.withdraw.reason")}
          description={t("listing.withdraw.reason.hint")}
          value={reason}
          onChange={setReason}
        />
        <div>
          <Button type="submit" variant="default" disabled={isSilent} loading={withdraw.isPending}>
            {t("listing.withdraw")}
          </Button>
        </div>
      </Form>
    </Panel>
  );
};

const Changes = ({ listing }: Props) => {
  const t = useText();
  const intl = useIntl();
  return (
    <Panel title={t("listing.history")}>
      {listing.history.length === 0 ? (
        <Empty title={t("listing.history.none")} />
      ) : (
        <ol className={styles.plain}>
          {listing.history.map((change) => (
            <li key={`${change.at}${change.cause}`}>
              <Line
                main={t(`listing.change.${change.cause}`)}
                sub={dotted([
                  intl.formatDate(change.at, { dateStyle: "long", timeStyle: "short" }),
                  change.reason,
                ])}
              />
            </li>
          ))}
        </ol>
      )}
    </Panel>
  );
};

const Standing = ({ listing }: Props) => {
  const t = useText();
  const { listed, statement, openFaults } = listing;
  return (
    <Panel title={t("listing.state")}>
      <p aria-live="polite">
        {listed && statement !== null
          ? t("listing.listed", { version: statement.version })
          : t(statement === null ? "listing.none" : "listing.not")}
      </p>
      <OpenFaults listing={listing} />
      {statement === null && (
        <div>
          <LinkButton to="/cars/$vehicle" params={{ vehicle: listing.vehicle }}>
            {t("listing.to-car")}
          </LinkButton>
        </div>
      )}
      {!listed && statement !== null && openFaults.length === 0 && <Publish listing={listing} />}
    </Panel>
  );
};

/** The dealer publishes and withdraws, says where the car stands, and gives out links. */
export const Listing = () => {
  const t = useText();
  const name = useCarName();
  const { vehicle } = route.useParams();
  const car = useQuery(carQuery(vehicle));
  const listing = useQuery(listingQuery(vehicle));
  const error = car.error ?? listing.error;
  if (error) return <RefusedPage title={t("listing.title")} error={error} />;
  if (!car.data || !listing.data) return <Loading />;
  return (
    <Page
      title={t("listing.title")}
      under={t("listing.under")}
      over={
        <Link to="/cars/$vehicle" params={{ vehicle }}>
          {name(car.data.vehicle)}
        </Link>
      }
      narrow
    >
      <Standing listing={listing.data} />
      <CarPlacePanel vehicle={vehicle} />
      <ShareLinks vehicle={vehicle} />
      {listing.data.listed && <Withdraw listing={listing.data} />}
      <Changes listing={listing.data} />
    </Page>
  );
};
