import type { SiteSeen } from "@evenhand/shared/http/sites";
import { useInfiniteQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Line, List } from "../../ui/List";
import { Empty, Page, Panel, Tag } from "../../ui/Page";
import { sitesQuery } from "../../entities/calendar/queries";

const SiteLine = ({ site: { id, name, address, bays } }: { readonly site: SiteSeen }) => {
  const t = useText();
  const link = (
    <Link to="/sites/$site" params={{ site: id }}>
      {name}
    </Link>
  );
  return <Line main={link} sub={address} end={<Tag>{t("sites.lifts", { count: bays.length })}</Tag>} />;
};

const NoSites = () => {
  const t = useText();
  return (
    <Empty title={t("sites.none")}>
      <p>{t("sites.none.hint")}</p>
    </Empty>
  );
};

/** A dealer's sites. */
export const Sites = () => {
  const t = useText();
  const sites = useInfiniteQuery(sitesQuery);
  return (
    <Page
      title={t("sites.title")}
      under={t("sites.under")}
      narrow
      actions={<LinkButton to="/sites/new">{t("sites.add")}</LinkButton>}
    >
      <Panel>
        <List
          query={sites}
          keyOf={({ id }) => id}
          renderRow={(site) => <SiteLine site={site} />}
          empty={<NoSites />}
        />
      </Panel>
    </Page>
  );
};
