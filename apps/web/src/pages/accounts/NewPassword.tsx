import { Button } from "@mantine/core";
import { mailedPages } from "@evenhand/shared/mailed-pages";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { getRouteApi } from "@tanstack/react-router";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Form } from "../../ui/Form";
import { LinkButton } from "../../ui/LinkButton";
import { Loading } from "../../ui/Loading";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { SettledEmail } from "../../features/accounts/EmailField";
import { EntryPage } from "../../features/accounts/EntryPage";
import { PasswordField } from "../../features/accounts/PasswordField";
import { becomes } from "../../entities/account/queries";

const route = getRouteApi(mailedPages.newPassword);

const Spent = ({ error }: { readonly error: unknown }) => {
  const t = useText();
  return (
    <Page title={t("new-password.title")} narrow>
      <ProblemNotice error={error} />
      <div>
        <LinkButton to="/forgotten-password">{t("new-password.ask-again")}</LinkButton>
      </div>
    </Page>
  );
};

const Done = () => {
  const t = useText();
  return (
    <Page title={t("new-password.done")} under={t("new-password.done.what")} narrow>
      <div>
        <LinkButton to="/sign-in" search={{}}>
          {t("sign-in.do")}
        </LinkButton>
      </div>
    </Page>
  );
};

/** The letter's link, asked of once, and the password that is chosen by it. */
const useLink = (token: string) => {
  const queries = useQueryClient();
  const choose = useMutation({
    mutationFn: (password: string) => call("passwordResets.use", { params: { token }, body: { password } }),
    onSuccess: () => becomes(queries, null),
  });
  const link = useQuery({
    queryKey: ["account", "new-password", token],
    queryFn: ({ signal }) => call("passwordResets.get", { params: { token }, signal }),
    enabled: !choose.isSuccess,
    staleTime: Infinity,
    retry: false,
  });
  return { link, choose };
};

interface ChooseProps {
  readonly email: string;
  readonly choose: ReturnType<typeof useLink>["choose"];
}

const ChooseForm = ({ email, choose }: ChooseProps) => {
  const t = useText();
  const [password, setPassword] = useState("");
  return (
    <Form error={choose.error} onSubmit={() => choose.mutate(password)}>
      <SettledEmail email={email} />
      <PasswordField kind="new" label={t("new-password.field")} value={password} onChange={setPassword} />
      <Button type="submit" size="md" loading={choose.isPending}>
        {t("new-password.do")}
      </Button>
    </Form>
  );
};

/** The single-use link of a letter leads here: a new password is chosen, and every session ends. */
export const NewPassword = () => {
  const t = useText();
  const { token } = route.useParams();
  const { link, choose } = useLink(token);
  if (choose.isSuccess) return <Done />;
  if (link.error) return <Spent error={link.error} />;
  if (!link.data) return <Loading />;
  const { email } = link.data;
  return (
    <EntryPage title={t("new-password.title")} under={t("new-password.for", { email })}>
      <Panel hint={t("new-password.what")}>
        <ChooseForm email={email} choose={choose} />
      </Panel>
    </EntryPage>
  );
};
