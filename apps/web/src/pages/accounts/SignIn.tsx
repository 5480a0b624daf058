import { Button } from "@mantine/core";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { getRouteApi, Link, useNavigate } from "@tanstack/react-router";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Form } from "../../ui/Form";
import { Panel } from "../../ui/Page";
import styles from "../../features/accounts/Accounts.module.css";
import { EmailField } from "../../features/accounts/EmailField";
import { EntryPage } from "../../features/accounts/EntryPage";
import { PasswordField } from "../../features/accounts/PasswordField";
import { becomes } from "../../entities/account/queries";

const route = getRouteApi("/sign-in");

/** Signs in, and goes where the person was going. */
const useEnter = () => {
  const queries = useQueryClient();
  const navigate = useNavigate();
  const { next } = route.useSearch();
  return useMutation({
    mutationFn: ({ email, password }: { readonly email: string; readonly password: string }) =>
      call("sessions.create", { body: { email: email.trim(), password } }),
    onSuccess: async ({ account }) => {
      becomes(queries, account);
      await navigate({ href: next ?? "/" });
    },
  });
};

const SignInForm = () => {
  const t = useText();
  const [email, setEmail] = useState("");
  const [password, setPassword] = useState("");
  const enter = useEnter();
  return (
    <Form error={enter.error} onSubmit={() => enter.mutate({ email, password })}>
      <EmailField own value={email} onChange={setEmail} />
      <PasswordField kind="current" label={t("sign-in.password")} value={password} onChange={setPassword} />
      <Button type="submit" size="md" loading={enter.isPending}>
        {t("sign-in.do")}
      </Button>
    </Form>
  );
};

export const SignIn = () => {
  const t = useText();
  return (
    <EntryPage title={t("sign-in.title")} under={t("sign-in.what")}>
      <Panel>
        <SignInForm />
      </Panel>
      <p>
        <Link to="/forgotten-password">{t("sign-in.forgotten")}</Link>
      </p>
      <p className={styles.aside}>{t("sign-in.invited")}</p>
    </EntryPage>
  );
};
