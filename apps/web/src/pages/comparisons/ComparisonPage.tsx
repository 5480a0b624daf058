import type { ComparisonSeen } from "@evenhand/shared/http/comparisons";
import type { Answer, AnswerCost, AnsweredMatter } from "@evenhand/shared/page-one";
import { Button } from "@mantine/core";
import { useMediaQuery } from "@mantine/hooks";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useCallback, useMemo } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Page } from "../../ui/Page";
import { PaperLink } from "../../ui/PaperLink";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { isKind, useAccount } from "../../entities/account/queries";
import { MakeSummary } from "../../features/decisions/MakeSummary";
import { useChoosing } from "../../features/disputes/use-choosing";
import { MatterSettling } from "../../features/disputes/MatterSettling";
import { ChooseBar } from "../../features/disputes/ChooseBar";
import { useCarName } from "../../entities/car/CarName";
import { ComparedProvider } from "../../entities/evidence/sides";
import { OverPart } from "../../entities/case/OverPart";
import styles from "./ComparisonPage.module.css";
import { ComparisonView } from "../../features/comparisons/ComparisonView";
import { viewOf, type ComparisonSearch } from "../../features/comparisons/search";
import { usePageOne } from "../../features/comparisons/use-page-one";

const route = getRouteApi("/signed-in/comparisons/$comparison");

const Side = ({ side, which }: { readonly side: Answer["a"]; readonly which: "a" | "b" }) => {
  const t = useText();
  const intl = useIntl();
  return (
    <span className={styles.side} data-side={which}>
      <strong>{side.organization}</strong>
      <span>
        {t("comparison.started", {
          kind: t(`kind.${side.kind}`),
          date: intl.formatDate(side.started, { dateStyle: "long", timeZone: side.zone }),
        })}
        {side.seal !== null && `, ${t("comparison.sealed")}`}
      </span>
    </span>
  );
};

const Against = ({ answer }: { readonly answer: Answer }) => {
  const t = useText();
  return (
    <div className={styles.against}>
      <Side side={answer.a} which="a" />
      <span className={styles.versus}>{t("comparison.against")}</span>
      <Side side={answer.b} which="b" />
    </div>
  );
};

interface ActionsProps {
  readonly comparison: string;
  readonly buys: boolean;
  readonly choosing: boolean;
  readonly onChoose: () => void;
}

const Actions = ({ comparison, buys, choosing, onChoose }: ActionsProps) => {
  const t = useText();
  return (
    <>
      <Button className={styles.print} variant="default" onClick={() => globalThis.print()}>
        {t("comparison.print")}
      </Button>
      <PaperLink of="comparisons.paper" id={comparison} />
      {buys && !choosing && (
        <Button variant="default" onClick={onChoose}>
          {t("release.start")}
        </Button>
      )}
      {buys && <MakeSummary comparison={comparison} />}
    </>
  );
};

/** The state of the page lies in its address: what it says, and how it is changed. */
const useSearchState = () => {
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const view = viewOf(search);
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
  return { search, onSearch };
};

const disputed: ReadonlySet<string> = new Set(["differ", "unstated", "doubtful"]);

/** What a buyer sees and can do with each matter between them and the dealer. */
const settlingOf = (comparison: string, { a, matters }: Answer, buys: boolean) => {
  const wrong = new Set(matters);
  if (!buys) return undefined;
  return (one: AnsweredMatter) => (
    <MatterSettling
      comparison={comparison}
      matter={one.matter}
      dealer={a.organization}
      mayLay={wrong.has(one) || one.lines.some(({ outcome }) => disputed.has(outcome))}
    />
  );
};

interface OpenedProps {
  readonly meta: ComparisonSeen;
  readonly answer: Answer;
  readonly cost?: AnswerCost;
}

const Opened = ({ meta, answer, cost }: OpenedProps) => {
  const t = useText();
  const name = useCarName();
  const buys = isKind(useAccount(), "buyer");
  const choosing = useChoosing(meta.id);
  const { search, onSearch } = useSearchState();
  // On a phone the answer comes first, and what can be done with it after it.
  const wide = useMediaQuery("(min-width: 621px)", true, { getInitialValueInEffect: false });
  const choose = (): void => {
    choosing.start();
    onSearch({ view: "items" });
  };
  const lay = (at: number): void => {
    if (!choosing.active) choosing.start(at);
    else choosing.choosing?.onChoose(at, true);
  };
  const compared = useMemo(
    () => ({ comparison: meta.id, statement: meta.a, inspection: meta.b }),
    [meta.id, meta.a, meta.b],
  );
  const settling = useMemo(() => settlingOf(meta.id, answer, buys), [meta.id, answer, buys]);
  const actions = <Actions comparison={meta.id} buys={buys} choosing={choosing.active} onChoose={choose} />;
  return (
    <Page
      title={name(answer.vehicle)}
      over={
        <OverPart parts={[meta.id]}>
          <Link to="/cars/$vehicle" params={{ vehicle: meta.vehicle }}>
            {t("comparison.back")}
          </Link>
        </OverPart>
      }
      under={<Against answer={answer} />}
      actions={wide ? actions : undefined}
    >
      <ComparedProvider value={compared}>
        <ComparisonView
          id={meta.id}
          answer={answer}
          cost={cost}
          search={search}
          onSearch={onSearch}
          choosing={choosing.choosing}
          onLay={buys ? lay : undefined}
          settling={settling}
          before={choosing.active || choosing.done > 0 ? <ChooseBar choosing={choosing} /> : undefined}
        />
      </ComparedProvider>
      {!wide && <div className={`${styles.actions} no-print`}>{actions}</div>}
      <p className={styles.foot}>
        {t("comparison.caution")} {t("comparison.engine", { engine: answer.engine })}.
      </p>
    </Page>
  );
};

/** The comparison of a statement and an inspection, for the buyer who ordered it. */
export const ComparisonPage = () => {
  const t = useText();
  const { comparison: id } = route.useParams();
  const { meta, answer, cost, error } = usePageOne(id);
  if (error) {
    return (
      <Page title={t("car.comparison")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!answer || !meta) return <Loading />;
  return <Opened meta={meta} answer={answer} cost={cost} />;
};
