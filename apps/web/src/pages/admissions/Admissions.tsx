import { SegmentedControl } from "@mantine/core";
import type { AdmissionSeen } from "@evenhand/shared/http/admissions";
import { useInfiniteQuery } from "@tanstack/react-query";
import { useState } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { dotted } from "../../ui/dotted";
import { Line, List } from "../../ui/List";
import { Empty, Page, Panel, Tag } from "../../ui/Page";
import { Decide } from "./Decide";
import { admissionsQuery } from "./queries";

interface ShowProps {
  readonly all: boolean;
  readonly onChange: (all: boolean) => void;
}

/** Those who wait, or everybody. */
const Show = ({ all, onChange }: ShowProps) => {
  const t = useText();
  return (
    <div>
      <SegmentedControl
        aria-label={t("admissions.show")}
        value={all ? "all" : "applied"}
        onChange={(value) => onChange(value === "all")}
        data={[
          { value: "applied", label: t("admissions.show.applied") },
          { value: "all", label: t("admissions.show.all") },
        ]}
      />
    </div>
  );
};

/** Who applied and how it stands, with what may be decided. */
const AdmissionRow = ({ admission }: { readonly admission: AdmissionSeen }) => {
  const t = useText();
  const intl = useIntl();
  const { name, kind, firm, appliedAt, decidedAt, reason, state, revision } = admission;
  const when = (instant: string): string => intl.formatDate(instant, { dateStyle: "medium" });
  return (
    <>
      <Line
        main={name}
        sub={dotted([
          t(`admissions.kind.${kind}`, { firm: firm.name }),
          decidedAt === null
            ? t("admissions.applied", { when: when(appliedAt) })
            : t("admissions.decided", { when: when(decidedAt) }),
          reason,
        ])}
        end={<Tag strong={state === "admitted"}>{t(`admission.${state}`)}</Tag>}
      />
      <Decide key={revision} admission={admission} />
    </>
  );
};

/** The operator admits firms and inspectors, each for a reason that is kept. */
export const Admissions = () => {
  const t = useText();
  const [all, setAll] = useState(false);
  const admissions = useInfiniteQuery(admissionsQuery(all ? undefined : "applied"));
  return (
    <Page title={t("admissions.title")} under={t("admissions.under")} narrow>
      <Show all={all} onChange={setAll} />
      <Panel>
        <List
          query={admissions}
          keyOf={({ id }) => id}
          renderRow={(admission) => <AdmissionRow admission={admission} />}
          empty={<Empty title={t(all ? "admissions.none.all" : "admissions.none")} />}
        />
      </Panel>
    </Page>
  );
};
