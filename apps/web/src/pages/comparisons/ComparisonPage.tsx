import { Button } from "@mantine/core";
import { IconPrinter } from "@tabler/icons-react";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useCallback } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { isKind, useAccount } from "../../entities/account/queries";
import { MakeSummary } from "../../features/decisions/MakeSummary";
import { useChoosing } from "../../features/disputes/use-choosing";
import { ChooseBar } from "../../features/disputes/ChooseBar";
import { useCarName } from "../../entities/car/CarName";
import styles from "./ComparisonPage.module.css";
import { ComparisonView } from "../../features/comparisons/ComparisonView";
import { viewOf, type ComparisonSearch } from "../../features/comparisons/search";
import type { ComparisonSource } from "../../entities/comparison/model";
import { useComparisonSource } from "../../features/comparisons/use-source";

const route = getRouteApi("/signed-in/comparisons/$comparison");

const Against = ({ source }: { readonly source: ComparisonSource }) => {
  const t = useText();
  const intl = useIntl();
  const side = (which: "a" | "b") => {
    const report = source[which];
    const { seal } = source.comparison[which];
    return (
      <span className={styles.side} data-side={which}>
        <strong>{report.author.organization}</strong>
        <span>
          {t("comparison.started", {
            kind: t(`kind.${report.kind}`),
            date: intl.formatDate(report.visit.started, { dateStyle: "long", timeZone: report.visit.zone }),
          })}
          {seal !== null && `, ${t("comparison.sealed")}`}
        </span>
      </span>
    );
  };
  return (
    <div className={styles.against}>
      {side("a")}
      <span className={styles.versus}>{t("comparison.against")}</span>
      {side("b")}
    </div>
  );
};

/** The comparison of a statement and an inspection, for the buyer who ordered it. */
export const ComparisonPage = () => {
  const t = useText();
  const name = useCarName();
  const account = useAccount();
  const { comparison: id } = route.useParams();
  const search = route.useSearch();
  const view = viewOf(search);
  const navigate = route.useNavigate();
  const { meta, source, error } = useComparisonSource(id);
  const choosing = useChoosing(id);
  const onSearch = useCallback(
    (change: Partial<ComparisonSearch>) =>
      void navigate({
        search: (old) => ({ ...old, ...change }),
        // Going to another view is a step to come back from; a filter is not.
        replace: change.view === undefined || change.view === view,
        resetScroll: false,
      }),
    [navigate, view],
  );
  const choose = (): void => {
    choosing.start();
    onSearch({ view: "items" });
  };
  if (error) {
    return (
      <Page title={t("car.comparison")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!source || !meta) return <Loading />;
  const buys = isKind(account, "buyer");
  return (
    <Page
      title={name(source.comparison.vehicle)}
      over={
        <Link to="/cars/$vehicle" params={{ vehicle: meta.vehicle }}>
          {t("comparison.back")}
        </Link>
      }
      under={<Against source={source} />}
      actions={
        <>
          <Button
            className={styles.print}
            variant="default"
            leftSection={<IconPrinter size={18} aria-hidden="true" />}
            onClick={() => globalThis.print()}
          >
            {t("comparison.print")}
          </Button>
          {buys && !choosing.active && (
            <Button variant="default" onClick={choose}>
              {t("release.start")}
            </Button>
          )}
          {buys && <MakeSummary comparison={id} />}
        </>
      }
    >
      <ComparisonView
        source={source}
        search={search}
        onSearch={onSearch}
        choosing={choosing.choosing}
        before={choosing.active || choosing.done > 0 ? <ChooseBar choosing={choosing} /> : undefined}
      />
      <p className={styles.foot}>
        {t("comparison.caution")} {t("comparison.engine", { engine: source.comparison.engine })}.
      </p>
    </Page>
  );
};
