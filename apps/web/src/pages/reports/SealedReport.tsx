import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useState } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { TableLinks } from "../../ui/TableLinks";
import { OverPart } from "../../entities/case/OverPart";
import { SealProof } from "../../entities/seal/SealProof";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { JustSealed } from "../../features/reports/JustSealed";
import { documentQuery, versionQuery } from "../../entities/report/queries";
import { linesOf, matches } from "../../features/reports/reader";
import { ReaderControls } from "../../features/reports/ReaderControls";
import { ReaderLines } from "../../features/reports/ReaderSection";

const route = getRouteApi("/signed-in/report-versions/$version");

/** A sealed version, its document, and the sheet it goes by. */
const useSealed = (id: string) => {
  const version = useQuery(versionQuery(id));
  const document = useQuery(documentQuery(id));
  const sheet = document.data?.sheet;
  const index = useQuery({
    ...sheetQuery(sheet?.id ?? "", sheet?.version ?? 0),
    enabled: sheet !== undefined,
  });
  const error = version.error ?? document.error ?? index.error;
  const data =
    version.data && document.data && index.data
      ? { version: version.data, document: document.data, index: index.data }
      : undefined;
  return { error, data };
};

type Sealed = NonNullable<ReturnType<typeof useSealed>["data"]>;

/** What stands over the lines: what is withheld, and the terms it was made under. */
const Preamble = ({ version, document }: Sealed) => {
  const t = useText();
  const terms = "terms" in document ? document.terms : undefined;
  return (
    <>
      <p>
        <Link to="/report-versions/$version/pictures" params={{ version: version.id }}>
          {t("gallery.report")}
        </Link>
        {!version.withheld && (
          <>
            {" · "}
            <TableLinks of="reportVersions.table" id={version.id} />
          </>
        )}
      </p>
      {version.withheld && (
        <Notice kind="note" title={t("reader.withheld.title")}>
          <p>{t("reader.withheld.what")}</p>
        </Notice>
      )}
      {terms !== undefined && (
        <Panel title={t("reader.terms")}>
          <p style={{ whiteSpace: "pre-wrap" }}>{terms}</p>
        </Panel>
      )}
    </>
  );
};

/** The lines, all of them or those looked for. */
const Lines = ({ version: { kind }, document, index }: Sealed) => {
  const search = route.useSearch();
  const { show = "all" } = search;
  const navigate = route.useNavigate();
  const [q, setQ] = useState("");
  const lines = linesOf(index, document).filter((line) => matches(line, show, q.trim()));
  return (
    <>
      <ReaderControls
        show={show}
        onShow={(next) =>
          void navigate({ search: { ...search, show: next }, replace: true, resetScroll: false })
        }
        q={q}
        onQ={setQ}
      />
      <ReaderLines
        index={index}
        scales={document.scales}
        side={kind === "inspection" ? "found" : "stated"}
        lines={lines}
      />
    </>
  );
};

/** Before the lines, which are long: nobody would find it under them. */
const Proof = ({ version: { id, seal, withheld } }: Pick<Sealed, "version">) => {
  const t = useText();
  return (
    <Panel title={t("proof.title")}>
      <SealProof id={id} seal={seal} of="reportVersions.document" withheld={withheld} />
    </Panel>
  );
};

const SealedPage = (sealed: Sealed) => {
  const t = useText();
  const intl = useIntl();
  const search = route.useSearch();
  const { kind, version, vehicle, organization, sealedAt } = sealed.version;
  return (
    <Page
      title={t("reader.title", { kind, version })}
      over={
        <OverPart parts={kind === "inspection" ? [sealed.version.id] : []}>
          <Link to="/cars/$vehicle" params={{ vehicle }}>
            {t("comparison.back")}
          </Link>
        </OverPart>
      }
      under={t("reader.under", {
        organization: organization.name,
        date: intl.formatDate(sealedAt, { dateStyle: "long" }),
      })}
    >
      {search.sealed && <JustSealed version={sealed.version} search={search} />}
      <Preamble {...sealed} />
      <Proof version={sealed.version} />
      <Lines {...sealed} />
    </Page>
  );
};

/** A sealed report as it stands: what is said, and, as plainly, what is not. */
export const SealedReport = () => {
  const t = useText();
  const { version } = route.useParams();
  const { error, data } = useSealed(version);
  if (error) {
    return (
      <Page title={t("car.statements")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  return data ? <SealedPage {...data} /> : <Loading />;
};
