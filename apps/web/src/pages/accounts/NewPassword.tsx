import { Button } from "@mantine/core";
import { mailedPages } from "@evenhand/shared/mailed-pages";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { getRouteApi } from "@tanstack/react-router";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Loading } from "../../ui/Loading";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "../../features/accounts/Accounts.module.css";
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

/** The single-use link of a letter leads here: a new password is chosen, and every session ends. */
export const NewPassword = () => {
  const t = useText();
  const { token } = route.useParams();
  const queries = useQueryClient();
  const [password, setPassword] = useState("");
  const choose = useMutation({
    mutationFn: () => call("passwordResets.use", { params: { token }, body: { password } }),
    onSuccess: () => becomes(queries, null),
  });
  const link = useQuery({
    queryKey: ["account", "new-password", token],
    queryFn: ({ signal }) => call("passwordResets.get", { params: { token }, signal }),
    enabled: !choose.isSuccess,
    staleTime: Infinity,
    retry: false,
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    choose.mutate();
  };
  if (choose.isSuccess) return <Done />;
  if (link.error) return <Spent error={link.error} />;
  if (!link.data) return <Loading />;
  const { email } = link.data;
  return (
    <div className={styles.entry}>
      <Page title={t("new-password.title")} under={t("new-password.for", { email })} narrow>
        <Panel hint={t("new-password.what")}>
          <form className={styles.form} onSubmit={submit}>
            {choose.error !== null && <ProblemNotice error={choose.error} />}
            <input type="hidden" name="email" autoComplete="username" value={email} readOnly />
            <PasswordField
              kind="new"
              label={t("new-password.field")}
              value={password}
              onChange={setPassword}
            />
            <Button type="submit" size="md" loading={choose.isPending}>
              {t("new-password.do")}
            </Button>
          </form>
        </Panel>
      </Page>
    </div>
  );
};
