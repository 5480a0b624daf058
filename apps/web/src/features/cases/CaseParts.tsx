import type { CaseParts as Parts, CaseSeen } from "@evenhand/shared/http/cases";
import { Link } from "@tanstack/react-router";
import type { ReactNode } from "react";
import { useIntl } from "react-intl";
import { useTimes } from "../../entities/time/use-times";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { LinkButton } from "../../ui/LinkButton";
import { Tag } from "../../ui/Page";
import styles from "./Cases.module.css";
import { useDecided } from "./use-decided";

interface PartProps {
  readonly title: string;
  readonly none?: string;
  readonly action?: ReactNode;
  readonly children: readonly ReactNode[];
}

const Part = ({ title, none, action, children }: PartProps) => (
  <section>
    <div className={styles.partHead}>
      <h3>{title}</h3>
      {action}
    </div>
    {children.length === 0 ? (
      <p className={styles.none}>{none}</p>
    ) : (
      <ul className={styles.partList}>{children}</ul>
    )}
  </section>
);

const useDate = (): ((at: string) => string) => {
  const intl = useIntl();
  return (at) => intl.formatDate(at, { dateStyle: "medium" });
};

const AskPress = ({ car }: { readonly car: string }) => {
  const t = useText();
  return (
    <LinkButton variant="subtle" to="/cars/$vehicle/ask" params={{ vehicle: car }}>
      {t("case.questions.ask")}
    </LinkButton>
  );
};

const Questions = ({ row: { as, car, parts } }: { readonly row: CaseSeen }) => {
  const t = useText();
  return (
    <Part
      title={t("case.questions")}
      none={t("case.questions.none")}
      action={as === "buyer" && <AskPress car={car.id} />}
    >
      {parts.questions.map(({ id, text, state }) => (
        <li key={id}>
          <Line
            main={
              <Link to="/questions/$question" params={{ question: id }}>
                {text}
              </Link>
            }
            end={<Tag>{t(`questions.state.${state}`)}</Tag>}
          />
        </li>
      ))}
    </Part>
  );
};

type VisitSeen = Parts["visits"][number];

const VisitLink = ({ visit }: { readonly visit: VisitSeen }) => {
  const t = useText();
  const words = t("case.visit.by", { inspector: visit.inspector });
  if (visit.appointment !== null)
    return (
      <Link to="/appointments/$appointment" params={{ appointment: visit.appointment }}>
        {words}
      </Link>
    );
  return (
    <Link to="/orders/$order" params={{ order: visit.order ?? "" }}>
      {words}
    </Link>
  );
};

const Visits = ({ visits }: Pick<Parts, "visits">) => {
  const t = useText();
  const date = useDate();
  const times = useTimes();
  return (
    <Part title={t("case.visits")} none={t("case.visits.none")}>
      {visits.map((visit) => {
        const { state, hour, askedAt } = visit;
        const bare = state === "asked-for" || state === "taken-on";
        return (
          <li key={visit.appointment ?? visit.order}>
            <Line
              main={<VisitLink visit={visit} />}
              sub={
                hour === null
                  ? t(bare ? "case.visit.no-hour" : "case.visit.no-hour.over", { date: date(askedAt) })
                  : times.full(hour.start, hour.zone)
              }
              end={<Tag>{bare ? t(`case.visit.state.${state}`) : t(`appointment.state.${state}`)}</Tag>}
            />
          </li>
        );
      })}
    </Part>
  );
};

type InspectionSeen = Parts["inspections"][number];

const AnswerLine = ({ comparison }: { readonly comparison: string }) => {
  const t = useText();
  return (
    <Line
      main={
        <Link to="/comparisons/$comparison" params={{ comparison }}>
          {t("case.answer")}
        </Link>
      }
    />
  );
};

const ReportLine = ({ report: { id, version, sealedAt } }: { readonly report: InspectionSeen }) => {
  const t = useText();
  const date = useDate();
  return (
    <Line
      main={
        <Link to="/report-versions/$version" params={{ version: id }}>
          {t("case.inspection", { version })}
        </Link>
      }
      sub={t("case.inspection.sealed", { date: date(sealedAt) })}
    />
  );
};

const Inspections = ({ inspections }: Pick<Parts, "inspections">) => {
  const t = useText();
  if (inspections.length === 0) return null;
  return (
    <Part title={t("case.inspections")}>
      {inspections.flatMap((report) => [
        ...(report.comparison === null
          ? []
          : [
              <li key={`${report.id} answer`}>
                <AnswerLine comparison={report.comparison} />
              </li>,
            ]),
        <li key={report.id}>
          <ReportLine report={report} />
        </li>,
      ])}
    </Part>
  );
};

/** With whom the lines are, and how those ended that did. */
const useReleasedWords = (): ((released: CaseSeen["parts"]["released"]) => string) => {
  const t = useText();
  return ({ withBuyer, withInspector, findingStands, statementStands, leftOpen, ...rest }) =>
    t("case.released.line", {
      ...rest,
      buyer: withBuyer,
      inspector: withInspector,
      finding: findingStands,
      statement: statementStands,
      open: leftOpen,
    });
};

const Released = ({ row: { parts, car } }: { readonly row: CaseSeen }) => {
  const t = useText();
  const words = useReleasedWords();
  if (Object.values(parts.released).every((count) => count === 0)) return null;
  return (
    <Part title={t("case.released")}>
      {[
        <li key="items">
          <Line
            main={
              <Link to="/released" search={{ vehicle: car.id }}>
                {t("case.released.all")}
              </Link>
            }
            sub={words(parts.released)}
          />
        </li>,
      ]}
    </Part>
  );
};

const Decided = ({ row: { parts, as } }: { readonly row: CaseSeen }) => {
  const t = useText();
  const date = useDate();
  const decided = useDecided(as);
  const buys = as === "buyer";
  const lines = buys
    ? parts.summaries.map(({ id, createdAt, decision }) => (
        <li key={id}>
          <Line
            main={
              <Link to="/summaries/$summary" params={{ summary: id }}>
                {t("case.summary", { date: date(createdAt) })}
              </Link>
            }
            sub={decision === null ? t("case.summary.undecided") : decided(decision)}
          />
        </li>
      ))
    : parts.decisions.map(({ id, state, at }) => (
        <li key={id}>
          <Line
            main={<Link to="/decisions">{t("case.decision", { date: date(at) })}</Link>}
            sub={decided(state)}
          />
        </li>
      ));
  return lines.length === 0 ? null : <Part title={t("case.decided")}>{lines}</Part>;
};

/** By the newest summary that was decided. */
const isBought = ({ summaries }: CaseSeen["parts"]): boolean => {
  const last = summaries.find(({ decision }) => decision !== null)?.decision;
  return last === "approved" || last === "counter-accepted";
};

/** Only the buyer's own, whose money it is. */
const Money = ({ row: { id, parts } }: { readonly row: CaseSeen }) => {
  const t = useText();
  const landed = (
    <Link to="/cases/$case/landed-cost" params={{ case: id }}>
      {t("case.money.landed")}
    </Link>
  );
  const before = (
    <Link to="/cases/$case/before-money" params={{ case: id }}>
      {t("case.money.before")}
    </Link>
  );
  return (
    <Part title={t("case.money")}>
      {(isBought(parts) ? [before, landed] : [landed]).map((link, at) => (
        <li key={at}>
          <Line main={link} />
        </li>
      ))}
    </Part>
  );
};

/** Everything that belongs to the case and this person may know of, each leading to its own page. */
export const CaseParts = ({ row }: { readonly row: CaseSeen }) => {
  const t = useText();
  return (
    <section className={styles.part}>
      <h2>{t("case.parts")}</h2>
      <div className={styles.parts}>
        <Inspections inspections={row.parts.inspections} />
        <Released row={row} />
        <Decided row={row} />
        {row.as === "buyer" && <Money row={row} />}
        <Visits visits={row.parts.visits} />
        {row.as !== "inspector" && <Questions row={row} />}
      </div>
    </section>
  );
};
