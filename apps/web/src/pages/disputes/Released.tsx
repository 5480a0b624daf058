import type { Release } from "@evenhand/shared/http/releases";
import { useInfiniteQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { List } from "../../ui/List";
import { Empty, Page } from "../../ui/Page";
import { isKind, useAccount } from "../../entities/account/queries";
import { OverPart } from "../../entities/case/OverPart";
import { byMatter, type ReleasedGroup } from "../../features/disputes/by-matter";
import { OneMatter } from "../../features/disputes/OneMatter";
import { releasedQuery } from "../../entities/release/queries";

const route = getRouteApi("/signed-in/released");

interface OverCarProps {
  readonly vehicle: string;
  readonly groups: readonly ReleasedGroup[];
}

/** One item of each comparison: the items of one comparison belong to one case. */
const onePartEach = (groups: readonly ReleasedGroup[]): string[] => [
  ...new Map(
    groups.flatMap(({ releases }) => releases.map(({ comparison, id }) => [comparison, id])),
  ).values(),
];

const OverCar = ({ vehicle, groups }: OverCarProps) => {
  const t = useText();
  return (
    <OverPart parts={onePartEach(groups)}>
      <Link to="/cars/$vehicle" params={{ vehicle }}>
        {t("comparison.back")}
      </Link>
    </OverPart>
  );
};

/** Items laid before the dealer: each with how it is settled, and with what the person can do. */
const NoRelease = ({ as }: { readonly as: Release["as"] }) => {
  const t = useText();
  return <Empty title={t(`released.none.${as}`)}>{t(`released.none.${as}.hint`)}</Empty>;
};

export const Released = () => {
  const t = useText();
  const { vehicle } = route.useSearch();
  const account = useAccount();
  const as = (["dealer", "inspector"] as const).find((kind) => isKind(account, kind)) ?? "buyer";
  const groups = useInfiniteQuery({
    ...releasedQuery({ vehicle }),
    select: ({ pages }) => byMatter(pages.flatMap(({ items }) => items)),
  });
  return (
    <Page
      title={t("released.title")}
      over={vehicle === undefined ? undefined : <OverCar vehicle={vehicle} groups={groups.data ?? []} />}
      under={t(`released.what.${as}`)}
      narrow
    >
      <List
        query={groups}
        keyOf={({ key }) => key}
        renderRow={(group) => <OneMatter group={group} />}
        empty={<NoRelease as={as} />}
      />
    </Page>
  );
};
