import { useQuery } from "@tanstack/react-query";
import { useEffect } from "react";
import { forgetReport } from "../../offline/leaving";
import { takePageFor } from "../../offline/owner";
import { Refusal } from "../../service/refusal";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { accountQuery } from "../../entities/account/queries";

interface Props {
  readonly report: string;
  readonly error: unknown;
  /** Answers that stand on this device and not with the service. */
  readonly onlyHere: number;
}

/** In place of the sheet, where whoever is signed in now has nothing to do with it: nothing of what this device holds is shown. */
export const Shut = ({ report, error, onlyHere }: Props) => {
  const t = useText();
  const over = error instanceof Refusal && error.problem.status === 401;
  // Perhaps somebody else has signed in meanwhile, on another page: then this one is loaded anew as theirs.
  const now = useQuery({ ...accountQuery, staleTime: 0 }).data;
  const another = now !== undefined && now !== null && !takePageFor(now.id);
  useEffect(() => {
    if (another) globalThis.location.reload();
    else if (!over) void forgetReport(report);
  }, [another, over, report]);
  return (
    <Page title={t("sheet.title.unknown")} narrow>
      <ProblemNotice error={error} />
      {onlyHere > 0 && !another && <p>{t("sheet.shut.kept", { count: onlyHere })}</p>}
      {over && (
        <LinkButton to="/sign-in" search={{ next: `/reports/${report}` }}>
          {t("sheet.shut.sign-in")}
        </LinkButton>
      )}
    </Page>
  );
};
