import { Button } from "@mantine/core";
import { useMutation, useQuery } from "@tanstack/react-query";
import { useNavigate } from "@tanstack/react-router";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { summariesOfQuery } from "./queries";
import { LinkButton } from "../../ui/LinkButton";

/** Makes the snapshot to decide on; the last one stays within reach. */
export const MakeSummary = ({
  comparison,
  again = false,
}: {
  readonly comparison: string;
  readonly again?: boolean;
}) => {
  const t = useText();
  const navigate = useNavigate();
  const last = useQuery(summariesOfQuery(comparison)).data?.items[0];
  const make = useMutation({
    mutationFn: () => call("summaries.create", { params: { id: comparison }, body: {} }),
    onSuccess: ({ id }) => navigate({ to: "/summaries/$summary", params: { summary: id } }),
  });
  return (
    <>
      {last && !again && (
        <LinkButton variant="default" to="/summaries/$summary" params={{ summary: last.id }}>
          {t("summary.last")}
        </LinkButton>
      )}
      <Button loading={make.isPending} onClick={() => make.mutate()}>
        {t(again ? "summary.again" : "comparison.summarize")}
      </Button>
      {make.error !== null && <ProblemNotice error={make.error} />}
    </>
  );
};
