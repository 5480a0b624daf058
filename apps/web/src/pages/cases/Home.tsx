import { Button } from "@mantine/core";
import type { OrganizationKind } from "@evenhand/shared/access";
import type { Account } from "@evenhand/shared/http/accounts";
import type { CaseHome } from "@evenhand/shared/http/cases";
import { useInfiniteQuery } from "@tanstack/react-query";
import { isKind, useAccount } from "../../entities/account/queries";
import { homeQuery } from "../../entities/case/queries";
import styles from "../../features/cases/Cases.module.css";
import { DraftLine } from "../../features/cases/DraftLine";
import { CaseLines, HomePart } from "../../features/cases/HomePart";
import { OperatorDesk } from "../../features/cases/OperatorDesk";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Loading } from "../../ui/Loading";
import { Empty, Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";

const begins = { buyer: "/cars", dealer: "/cars", inspector: "/calendars" } as const;

/** Where nothing has begun: how it begins. */
const NoCases = ({ account }: { readonly account: Account }) => {
  const t = useText();
  const kinds = ["buyer", "dealer", "inspector"] as const;
  return kinds
    .filter((kind) => isKind(account, kind))
    .map((kind) => (
      <Empty key={kind} title={t(`cases.none.${kind}`)}>
        <p>{t(`cases.none.${kind}.hint`)}</p>
        <LinkButton variant="default" to={begins[kind]}>
          {t(`cases.none.${kind}.do`)}
        </LinkButton>
      </Empty>
    ));
};

const More = ({ load, loading }: { readonly load: () => void; readonly loading: boolean }) => {
  const t = useText();
  return (
    <div className={styles.more}>
      <Button variant="default" loading={loading} onClick={load}>
        {t("list.more")}
      </Button>
    </div>
  );
};

/** Cases first, since others wait in them; then what is begun and not sealed. */
const Yours = ({ first: { yours, drafts, drafting } }: { readonly first: CaseHome }) => {
  const t = useText();
  const left = drafting - drafts.length;
  return (
    <>
      <HomePart title={t("cases.yours")} count={yours.length + drafting} none={t("cases.yours.none")}>
        <CaseLines rows={yours} />
        {drafts.map((draft) => (
          <DraftLine key={draft.id} draft={draft} />
        ))}
      </HomePart>
      {left > 0 && <p className={styles.none}>{t("case.drafts.more", { left })}</p>}
    </>
  );
};

interface PartsProps {
  readonly first: CaseHome;
  readonly rest: CaseHome["rest"];
  readonly more: (() => void) | undefined;
  readonly loading: boolean;
}

const Parts = ({ first, rest, more, loading }: PartsProps) => {
  const t = useText();
  const shown = first.yours.length + first.others.length;
  return (
    <>
      <Yours first={first} />
      <HomePart title={t("cases.others")} count={first.others.length} none={t("cases.others.none")}>
        <CaseLines rows={first.others} />
      </HomePart>
      {first.open > shown && <p className={styles.none}>{t("cases.more", { shown, open: first.open })}</p>}
      {rest.length > 0 && (
        <HomePart
          title={t("cases.rest")}
          count={rest.length}
          open={more !== undefined}
          none={t("cases.rest.none")}
        >
          <CaseLines rows={rest} />
        </HomePart>
      )}
      {more && <More load={more} loading={loading} />}
    </>
  );
};

const Cases = ({ account }: { readonly account: Account }) => {
  const query = useInfiniteQuery(homeQuery);
  if (query.error) return <ProblemNotice error={query.error} />;
  const [first] = query.data?.pages ?? [];
  if (!query.data || first === undefined) return <Loading />;
  const rest = query.data.pages.flatMap((page) => page.rest);
  const party = (["buyer", "dealer", "inspector"] as const).some((kind) => isKind(account, kind));
  const none = first.yours.length + first.others.length + first.drafting + rest.length === 0;
  return (
    <div className={styles.sheet}>
      {first.desk && <OperatorDesk desk={first.desk} />}
      {party && none && <NoCases account={account} />}
      {party && !none && (
        <Parts
          first={first}
          rest={rest}
          more={query.hasNextPage ? () => void query.fetchNextPage() : undefined}
          loading={query.isFetchingNextPage}
        />
      )}
    </div>
  );
};

const actions = [
  { kind: "dealer", to: "/cars/new", words: "cars.add" },
  { kind: "inspector", to: "/day", words: "nav.day" },
] as const satisfies readonly { kind: OrganizationKind; to: string; words: string }[];

/** Yours to do, others owe, the rest. Who is more than one of the four sees the cases of each together. */
export const Home = () => {
  const t = useText();
  const account = useAccount();
  if (!account) return null;
  const offered = actions.filter(({ kind }) => isKind(account, kind));
  return (
    <Page
      title={t("home.title", { name: account.name })}
      narrow
      actions={offered.map(({ to, words }) => (
        <LinkButton key={to} variant="default" to={to}>
          {t(words)}
        </LinkButton>
      ))}
    >
      <Cases account={account} />
    </Page>
  );
};
