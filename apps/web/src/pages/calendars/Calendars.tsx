import type { CalendarSeen } from "@evenhand/shared/http/calendars";
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

/** Who enters inspectors: an administrator of their firm. */
const useMayAdd = (): boolean =>
  (useAccount()?.memberships ?? []).some(
    ({ organization, role }) => organization.kind === "inspector" && role === "admin",
  );

const CalendarLine = ({
  calendar: { id, name, firm, hours, admission },
}: {
  readonly calendar: CalendarSeen;
}) => {
  const t = useText();
  const link = (
    <Link to="/calendars/$calendar" params={{ calendar: id }}>
      {name}
    </Link>
  );
  return (
    <Line
      main={link}
      sub={t("calendars.line", { firm: firm.name, zone: hours.zone.replaceAll("_", " ") })}
      end={<Tag strong={admission === "admitted"}>{t(`admission.${admission}`)}</Tag>}
    />
  );
};

const NoCalendars = () => {
  const t = useText();
  return (
    <Empty title={t("calendars.none")}>
      <p>{t("calendars.none.hint")}</p>
    </Empty>
  );
};

/** The inspectors of a firm with their hours. */
export const Calendars = () => {
  const t = useText();
  const calendars = useInfiniteQuery(calendarsQuery);
  const add = <LinkButton to="/calendars/new">{t("calendars.add")}</LinkButton>;
  return (
    <Page
      title={t("calendars.title")}
      under={t("calendars.under")}
      narrow
      actions={useMayAdd() ? add : undefined}
    >
      <div className={styles.stack}>
        <Panel>
          <List
            query={calendars}
            keyOf={({ id }) => id}
            renderRow={(calendar) => <CalendarLine calendar={calendar} />}
            empty={<NoCalendars />}
          />
        </Panel>
        <FeedsPanel />
      </div>
    </Page>
  );
};
