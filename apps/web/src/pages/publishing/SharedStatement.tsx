import { SegmentedControl } from "@mantine/core";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi } from "@tanstack/react-router";
import { useState } from "react";
import { useIntl } from "react-intl";
import { Refusal } from "../../service/refusal";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { oneOf } from "../../service/one-of";
import { linesOf } from "../../features/reports/reader";
import { ReaderSection } from "../../features/reports/ReaderSection";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { useCarName } from "../../entities/car/CarName";
import { sharedStatementQuery } from "../../features/publishing/queries";

const route = getRouteApi("/shared/$token");
const shows = ["all", "answered", "silent"] as const;

const Gone = ({ error }: { readonly error: Error }) => {
  const t = useText();
  const gone = error instanceof Refusal && (error.problem.status === 404 || error.problem.status === 410);
  return (
    <Page title={t("shared.gone")} narrow>
      {gone ? <p>{t("shared.gone.what")}</p> : <ProblemNotice error={error} />}
      <div>
        <LinkButton variant="default" to="/sign-in">
          {t("shared.sign-in")}
        </LinkButton>
      </div>
    </Page>
  );
};

/** The published statement for a reader with a link and no account. */
export const SharedStatement = () => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  const { token } = route.useParams();
  const [show, setShow] = useState<(typeof shows)[number]>("all");
  const { data: shared, error } = useQuery(sharedStatementQuery(token));
  const sheet = shared?.document.sheet;
  const index = useQuery({
    ...sheetQuery(sheet?.id ?? "", sheet?.version ?? 0),
    enabled: sheet !== undefined,
  });
  const failure = error ?? index.error;
  if (failure) return <Gone error={failure} />;
  if (!shared || !index.data) return <Loading />;
  const { document, statement, dealer } = shared;
  const lines = linesOf(index.data, document).filter(
    ({ finding }) => show === "all" || (show === "silent") === (finding === null),
  );
  return (
    <Page
      title={t("shared.title", { car: name(shared.vehicle) })}
      over={t("shared.over", { dealer: dealer.name })}
      under={t("shared.under", {
        version: statement.version,
        date: intl.formatDate(statement.sealedAt, { dateStyle: "long" }),
      })}
    >
      <Notice kind="note" title={t("shared.note")}>
        <p>{t("shared.note.what")}</p>
      </Notice>
      {document.terms !== undefined && (
        <Panel title={t("reader.terms")}>
          <p style={{ whiteSpace: "pre-wrap" }}>{document.terms}</p>
        </Panel>
      )}
      <div className="no-print">
        <SegmentedControl
          aria-label={t("reader.show")}
          value={show}
          onChange={(next) => setShow(oneOf(shows, next) ?? "all")}
          data={shows.map((value) => ({ value, label: t(`reader.show.${value}`) }))}
        />
      </div>
      {index.data.sheet.sections.map((section) => (
        <ReaderSection
          key={section.id}
          section={section}
          index={index.data}
          scales={document.scales}
          side="stated"
          lines={lines.filter(({ item }) => item.section === section.id)}
        />
      ))}
    </Page>
  );
};
