import { useInfiniteQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Line, List } from "../../ui/List";
import { Empty, Page, Panel, Tag } from "../../ui/Page";
import { useAccount } from "../../entities/account/queries";
import styles from "../../features/calendars/Calendars.module.css";
import { FeedsPanel } from "../../features/calendars/Feeds";
import { calendarsQuery } from "../../entities/calendar/queries";

/** The inspectors of a firm with their hours. */
export const Calendars = () => {
  const t = useText();
  const account = useAccount();
  const calendars = useInfiniteQuery(calendarsQuery);
  const admin =
    account?.memberships.some(
      ({ organization, role }) => organization.kind === "inspector" && role === "admin",
    ) ?? false;
  return (
    <Page
      title={t("calendars.title")}
      under={t("calendars.under")}
      narrow
      actions={admin ? <LinkButton to="/calendars/new">{t("calendars.add")}</LinkButton> : undefined}
    >
      <div className={styles.stack}>
        <Panel>
          <List
            query={calendars}
            keyOf={({ id }) => id}
            renderRow={({ id, name, firm, hours, admission }) => (
              <Line
                main={
                  <Link to="/calendars/$calendar" params={{ calendar: id }}>
                    {name}
                  </Link>
                }
                sub={t("calendars.line", { firm: firm.name, zone: hours.zone.replaceAll("_", " ") })}
                end={<Tag strong={admission === "admitted"}>{t(`admission.${admission}`)}</Tag>}
              />
            )}
            empty={
              <Empty title={t("calendars.none")}>
                <p>{t("calendars.none.hint")}</p>
              </Empty>
            }
          />
        </Panel>
        <FeedsPanel />
      </div>
    </Page>
  );
};
