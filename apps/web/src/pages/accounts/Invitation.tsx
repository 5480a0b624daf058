import { Button, PasswordInput, TextInput } from "@mantine/core";
import { mailedPages } from "@evenhand/shared/mailed-pages";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { getRouteApi, useNavigate } from "@tanstack/react-router";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "../../features/accounts/Accounts.module.css";
import { becomes } from "../../entities/account/queries";

const route = getRouteApi(mailedPages.invitation);

/** The single-use link of an invitation leads here. */
export const Invitation = () => {
  const t = useText();
  const { token } = route.useParams();
  const navigate = useNavigate();
  const queries = useQueryClient();
  const [name, setName] = useState("");
  const [password, setPassword] = useState("");
  const invitation = useQuery({
    queryKey: ["invitation", token],
    queryFn: ({ signal }) => call("invitations.get", { params: { token }, signal }),
  });
  const accept = useMutation({
    mutationFn: () =>
      call("invitations.accept", { params: { token }, body: { name: name.trim(), password } }),
    onSuccess: async () => {
      becomes(queries, null);
      await navigate({ to: "/sign-in", search: {} });
    },
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    accept.mutate();
  };
  if (invitation.error) {
    return (
      <Page title={t("invitation.title.spent")} narrow>
        <ProblemNotice error={invitation.error} />
        <p>{t("invitation.spent.what")}</p>
      </Page>
    );
  }
  if (!invitation.data) return <Loading />;
  const { organization, email, known } = invitation.data;
  return (
    <div className={styles.entry}>
      <Page
        title={t("invitation.title", { organization: organization.name })}
        under={t("invitation.for", { email })}
        narrow
      >
        <Panel hint={t(known ? "invitation.known" : "invitation.new")}>
          <form className={styles.form} onSubmit={submit}>
            {accept.error !== null && <ProblemNotice error={accept.error} />}
            <input type="hidden" name="email" autoComplete="username" value={email} readOnly />
            <TextInput
              size="md"
              name="name"
              autoComplete="name"
              label={t("invitation.name")}
              description={t("invitation.name.hint")}
              required
              withAsterisk={false}
              value={name}
              onChange={(event) => setName(event.currentTarget.value)}
            />
            <PasswordInput
              size="md"
              name="password"
              autoComplete={known ? "current-password" : "new-password"}
              label={t(known ? "sign-in.password" : "invitation.password")}
              description={known ? undefined : t("invitation.password.hint")}
              visibilityToggleButtonProps={{ "aria-label": t("sign-in.show") }}
              required
              withAsterisk={false}
              minLength={known ? undefined : 12}
              value={password}
              onChange={(event) => setPassword(event.currentTarget.value)}
            />
            <Button type="submit" size="md" loading={accept.isPending}>
              {t("invitation.do")}
            </Button>
          </form>
        </Panel>
      </Page>
    </div>
  );
};
