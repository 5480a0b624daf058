import { Button } from "@mantine/core";
import type { Asked } from "@evenhand/shared/page-one";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { Link, useParams } from "@tanstack/react-router";
import { comparisonQuery } from "../../../entities/comparison/queries";
import { isKind, useAccount } from "../../../entities/account/queries";
import { call } from "../../../service/client";
import { useText } from "../../../strings/text";
import { ProblemNotice } from "../../../ui/ProblemNotice";

/** What the buyer has asked about the car so far, newest first. */
const useAskedOf = (vehicle: string | undefined) =>
  useQuery({
    queryKey: ["questions", "of-car", vehicle],
    queryFn: ({ signal }) => call("questions.list", { query: { vehicle }, signal }),
    enabled: vehicle !== undefined,
  }).data?.items;

interface Props {
  readonly ask: Asked;
}

const AskButton = ({ ask: { words, item, position }, vehicle }: Props & { readonly vehicle: string }) => {
  const t = useText();
  const queries = useQueryClient();
  const put = useMutation({
    mutationFn: () =>
      call("questions.create", {
        params: { id: vehicle },
        body: { item, position, text: words, send: true },
      }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["questions"] }),
  });
  return (
    <span className="no-print">
      {put.error !== null && <ProblemNotice error={put.error} />}
      <Button
        variant="default"
        size="compact-sm"
        loading={put.isPending}
        onClick={() => put.mutate()}
        aria-label={t("answer.ask.it", { question: words })}
      >
        {t("answer.ask.do")}
      </Button>
    </span>
  );
};

/** Puts a question as it stands there; or to where it stands, once it is asked. */
export const AskIt = ({ ask }: Props) => {
  const t = useText();
  const buys = isKind(useAccount(), "buyer");
  const { comparison } = useParams({ strict: false });
  const meta = useQuery({ ...comparisonQuery(comparison ?? ""), enabled: buys && comparison !== undefined });
  const vehicle = meta.data?.vehicle;
  const asked = useAskedOf(buys ? vehicle : undefined);
  if (!buys || vehicle === undefined || asked === undefined) return null;
  const known = asked.find(({ text, state }) => text === ask.words && state !== "withdrawn");
  if (known === undefined) return <AskButton ask={ask} vehicle={vehicle} />;
  return (
    <Link className="no-print" to="/questions/$question" params={{ question: known.id }}>
      {t("answer.ask.asked", { state: t(`questions.state.${known.state}`) })}
    </Link>
  );
};
