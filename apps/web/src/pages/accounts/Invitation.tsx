import { Button } from "@mantine/core";
import type { InvitationSeen } from "@evenhand/shared/http/accounts";
import { mailedPages } from "@evenhand/shared/mailed-pages";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { getRouteApi, useNavigate } from "@tanstack/react-router";
import { useState } from "react";
import { Zone } from "@evenhand/shared/zone";
import { ownZone } from "../../entities/time/zone-time";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { TextField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { Loading } from "../../ui/Loading";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { EntryPage } from "../../features/accounts/EntryPage";
import { SettledEmail } from "../../features/accounts/EmailField";
import { PasswordField } from "../../features/accounts/PasswordField";
import { becomes } from "../../entities/account/queries";

const route = getRouteApi(mailedPages.invitation);

/** The link was used, taken back, or is over. */
const Spent = ({ error }: { readonly error: unknown }) => {
  const t = useText();
  return (
    <Page title={t("invitation.title.spent")} narrow>
      <ProblemNotice error={error} />
      <p>{t("invitation.spent.what")}</p>
    </Page>
  );
};

/** The zone of this device, where it is one of the database: news that is gathered comes in the morning there. */
const ownZoneKnown = (): { readonly zone?: string } => {
  const { data: zone } = Zone.safeParse(ownZone());
  return zone === undefined ? {} : { zone };
};

const useAccept = (token: string) => {
  const navigate = useNavigate();
  const queries = useQueryClient();
  return useMutation({
    mutationFn: ({ name, password }: { readonly name: string; readonly password: string }) =>
      call("invitations.accept", {
        params: { token },
        body: { name: name.trim(), password, ...ownZoneKnown() },
      }),
    onSuccess: async () => {
      becomes(queries, null);
      await navigate({ to: "/sign-in", search: {} });
    },
  });
};

const NameField = ({
  value,
  onChange,
}: {
  readonly value: string;
  readonly onChange: (name: string) => void;
}) => {
  const t = useText();
  return (
    <TextField
      name="name"
      autoComplete="name"
      label={t("invitation.name")}
      description={t("invitation.name.hint")}
      required
      value={value}
      onChange={onChange}
    />
  );
};

/** Who has an account joins with its password; who has none chooses one. */
const JoinForm = ({ token, invitation }: { readonly token: string; readonly invitation: InvitationSeen }) => {
  const t = useText();
  const { email, known } = invitation;
  const [name, setName] = useState("");
  const [password, setPassword] = useState("");
  const accept = useAccept(token);
  return (
    <Panel hint={t(known ? "invitation.known" : "invitation.new")}>
      <Form error={accept.error} onSubmit={() => accept.mutate({ name, password })}>
        <SettledEmail email={email} />
        <NameField value={name} onChange={setName} />
        <PasswordField
          kind={known ? "current" : "new"}
          label={t(known ? "sign-in.password" : "invitation.password")}
          value={password}
          onChange={setPassword}
        />
        <Button type="submit" size="md" loading={accept.isPending}>
          {t("invitation.do")}
        </Button>
      </Form>
    </Panel>
  );
};

/** The single-use link of an invitation leads here. */
export const Invitation = () => {
  const t = useText();
  const { token } = route.useParams();
  const { data: invitation, error } = useQuery({
    queryKey: ["invitation", token],
    queryFn: ({ signal }) => call("invitations.get", { params: { token }, signal }),
  });
  if (error) return <Spent error={error} />;
  if (!invitation) return <Loading />;
  return (
    <EntryPage
      title={t("invitation.title", { organization: invitation.organization.name })}
      under={t("invitation.for", { email: invitation.email })}
    >
      <JoinForm token={token} invitation={invitation} />
    </EntryPage>
  );
};
