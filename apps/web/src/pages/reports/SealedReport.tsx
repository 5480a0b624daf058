import { SegmentedControl, TextInput } from "@mantine/core";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useState } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Empty, Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { JustSealed } from "../../features/reports/JustSealed";
import { documentQuery, versionQuery } from "../../entities/report/queries";
import { linesOf, type Line } from "../../features/reports/reader";
import { ReaderSection } from "../../features/reports/ReaderSection";
import styles from "../../features/reports/Reader.module.css";

const route = getRouteApi("/signed-in/report-versions/$version");

const matches = (line: Line, show: "all" | "answered" | "silent", q: string): boolean =>
  (show === "all" || (show === "silent") === (line.finding === null && !line.withheld)) &&
  q
    .toLowerCase()
    .split(/\s+/)
    .every((word) => line.words.includes(word));

/** A sealed report as it stands: what is said, and, as plainly, what is not. */
export const SealedReport = () => {
  const t = useText();
  const intl = useIntl();
  const { version: id } = route.useParams();
  const search = route.useSearch();
  const { show = "all" } = search;
  const navigate = route.useNavigate();
  const [q, setQ] = useState("");
  const version = useQuery(versionQuery(id));
  const document = useQuery(documentQuery(id));
  const sheet = document.data?.sheet;
  const index = useQuery({
    ...sheetQuery(sheet?.id ?? "", sheet?.version ?? 0),
    enabled: sheet !== undefined,
  });
  const error = version.error ?? document.error ?? index.error;
  if (error) {
    return (
      <Page title={t("car.statements")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!version.data || !document.data || !index.data) return <Loading />;
  const lines = linesOf(index.data, document.data).filter((line) => matches(line, show, q.trim()));
  const { kind, organization, sealedAt } = version.data;
  const terms = "terms" in document.data ? document.data.terms : undefined;
  return (
    <Page
      title={t("reader.title", { kind, version: version.data.version })}
      over={
        <Link to="/cars/$vehicle" params={{ vehicle: version.data.vehicle }}>
          {t("comparison.back")}
        </Link>
      }
      under={t("reader.under", {
        organization: organization.name,
        date: intl.formatDate(sealedAt, { dateStyle: "long" }),
      })}
    >
      {search.sealed && <JustSealed version={version.data} search={search} />}
      {version.data.withheld && (
        <Notice kind="note" title={t("reader.withheld.title")}>
          <p>{t("reader.withheld.what")}</p>
        </Notice>
      )}
      {terms !== undefined && (
        <Panel title={t("reader.terms")}>
          <p style={{ whiteSpace: "pre-wrap" }}>{terms}</p>
        </Panel>
      )}
      <div className={`${styles.controls} no-print`}>
        <SegmentedControl
          aria-label={t("reader.show")}
          value={show}
          onChange={(next) =>
            void navigate({
              search: { ...search, show: next === "answered" || next === "silent" ? next : undefined },
              replace: true,
              resetScroll: false,
            })
          }
          data={[
            { value: "all", label: t("reader.show.all") },
            { value: "answered", label: t("reader.show.answered") },
            { value: "silent", label: t("reader.show.silent") },
          ]}
        />
        <TextInput
          type="search"
          aria-label={t("reader.search")}
          placeholder={t("reader.search")}
          value={q}
          onChange={(event) => setQ(event.currentTarget.value)}
        />
      </div>
      {lines.length === 0 && <Empty title={t("reader.none")} />}
      {index.data.sheet.sections.map((section) => (
        <ReaderSection
          key={section.id}
          section={section}
          index={index.data}
          scales={document.data.scales}
          side={kind === "inspection" ? "found" : "stated"}
          lines={lines.filter(({ item }) => item.section === section.id)}
        />
      ))}
    </Page>
  );
};
