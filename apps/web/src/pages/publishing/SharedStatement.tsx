import { SegmentedControl } from "@mantine/core";
import type { SharedStatement as Statement } from "@evenhand/shared/http/publishing";
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
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { useCarName } from "../../entities/car/CarName";
import { SharedPictures } from "../../features/publishing/SharedPictures";
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

/** The statement behind the link, and the sheet it answers. */
const useShared = (token: string) => {
  const { data: shared, error } = useQuery(sharedStatementQuery(token));
  const sheet = shared?.document.sheet;
  const index = useQuery({
    ...sheetQuery(sheet?.id ?? "", sheet?.version ?? 0),
    enabled: sheet !== undefined,
  });
  return { shared, index: index.data, error: error ?? index.error };
};

interface DocumentProps {
  readonly document: Statement["document"];
  readonly index: SheetIndex;
}

/** Line by line: all of them, those with an answer, or those without. */
const Lines = ({ document, index }: DocumentProps) => {
  const t = useText();
  const [show, setShow] = useState<(typeof shows)[number]>("all");
  const lines = linesOf(index, document).filter(
    ({ finding }) => show === "all" || (show === "silent") === (finding === null),
  );
  return (
    <>
      <div className="no-print">
        <SegmentedControl
          aria-label={t("reader.show")}
          value={show}
          onChange={(next) => setShow(oneOf(shows, next) ?? "all")}
          data={shows.map((value) => ({ value, label: t(`reader.show.${value}`) }))}
        />
      </div>
      {index.sheet.sections.map((section) => (
        <ReaderSection
          key={section.id}
          section={section}
          index={index}
          scales={document.scales}
          side="stated"
          lines={lines.filter(({ item }) => item.section === section.id)}
        />
      ))}
    </>
  );
};

const Terms = ({ terms }: { readonly terms: string }) => {
  const t = useText();
  return (
    <Panel title={t("reader.terms")}>
      <p style={{ whiteSpace: "pre-wrap" }}>{terms}</p>
    </Panel>
  );
};

/** The published statement for a reader with a link and no account. */
export const SharedStatement = () => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  const { token } = route.useParams();
  const { shared, index, error } = useShared(token);
  if (error) return <Gone error={error} />;
  if (!shared || !index) return <Loading />;
  const { document, statement, dealer } = shared;
  const date = intl.formatDate(statement.sealedAt, { dateStyle: "long" });
  return (
    <Page
      title={t("shared.title", { car: name(shared.vehicle) })}
      over={t("shared.over", { dealer: dealer.name })}
      under={t("shared.under", { version: statement.version, date })}
    >
      <Notice kind="note" title={t("shared.note")}>
        <p>{t("shared.note.what")}</p>
      </Notice>
      {document.terms !== undefined && <Terms terms={document.terms} />}
      <SharedPictures token={token} pictures={shared.pictures} index={index} />
      <Lines document={document} index={index} />
    </Page>
  );
};
