import { Button } from "@mantine/core";
import { useRouter } from "@tanstack/react-router";
import { Refusal } from "../service/refusal";
import { useText } from "../strings/text";
import { Page } from "./Page";
import { ProblemNotice } from "./ProblemNotice";
import { LinkButton } from "./LinkButton";

/** A page whose contents the service did not give: its title, and why. */
export const RefusedPage = ({ title, error }: { readonly title: string; readonly error: unknown }) => (
  <Page title={title} narrow>
    <ProblemNotice error={error} />
  </Page>
);

/** A page that could not be shown, and what would work. */
export const Failed = ({ error }: { readonly error: unknown }) => {
  const t = useText();
  const router = useRouter();
  if (error instanceof Refusal && error.problem.status === 404) return <Missing />;
  return (
    <Page title={t("problem.unexpected")} narrow>
      <ProblemNotice error={error} />
      <div>
        <Button onClick={() => void router.invalidate()}>{t("problem.again")}</Button>
      </div>
    </Page>
  );
};

export const Missing = () => {
  const t = useText();
  return (
    <Page title={t("problem.not-found")} narrow>
      <p>{t("problem.not-found.what")}</p>
      <div>
        <LinkButton to="/">{t("problem.home")}</LinkButton>
      </div>
    </Page>
  );
};
