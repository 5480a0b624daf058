import { Button, NativeSelect, TextInput } from "@mantine/core";
import type { Membership } from "@evenhand/shared/http/accounts";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";
import { useText } from "../../strings/text";
import { List } from "../../ui/List";
import { Notice } from "../../ui/Notice";
import { Empty, Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "../../features/accounts/Accounts.module.css";
import { MemberLine } from "../../features/accounts/Member";
import { OpenInvitations } from "../../features/accounts/OpenInvitations";
import { useAccount } from "../../entities/account/queries";

const membersQuery = (organization: string) =>
  pagedQuery(["members", organization], (after, signal) =>
    call("organizations.members", { params: { id: organization }, query: { after }, signal }),
  );

const Invite = ({ organization }: { readonly organization: string }) => {
  const t = useText();
  const queries = useQueryClient();
  const [email, setEmail] = useState("");
  const [role, setRole] = useState<"admin" | "member">("member");
  const invite = useMutation({
    mutationFn: () => call("invitations.create", { body: { email: email.trim(), organization, role } }),
    onSuccess: async () => {
      setEmail("");
      await queries.invalidateQueries({ queryKey: ["open-invitations", organization] });
    },
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    invite.mutate();
  };
  return (
    <form className={styles.form} onSubmit={submit}>
      <h3>{t("organization.invite")}</h3>
      {invite.error !== null && <ProblemNotice error={invite.error} />}
      {invite.isSuccess && <Notice kind="note" title={t("organization.invited")} />}
      <div className={styles.row}>
        <TextInput
          size="md"
          type="email"
          label={t("sign-in.email")}
          required
          withAsterisk={false}
          value={email}
          onChange={(event) => setEmail(event.currentTarget.value)}
        />
        <NativeSelect
          size="md"
          label={t("organization.role")}
          value={role}
          data={[
            { value: "member", label: t("role.member") },
            { value: "admin", label: t("role.admin") },
          ]}
          onChange={(event) => setRole(event.currentTarget.value === "admin" ? "admin" : "member")}
        />
        <Button type="submit" size="md" loading={invite.isPending}>
          {t("organization.invite.do")}
        </Button>
      </div>
    </form>
  );
};

const OneOrganization = ({ membership }: { readonly membership: Membership }) => {
  const t = useText();
  const { organization, role } = membership;
  const viewer = useAccount();
  const members = useInfiniteQuery(membersQuery(organization.id));
  return (
    <Panel title={organization.name} hint={t(`organization.kind.${organization.kind}`)}>
      <List
        query={members}
        keyOf={({ account }) => account.id}
        empty={<Empty title={t("organization.none")} />}
        renderRow={(member) => (
          <MemberLine
            organization={organization}
            member={member}
            isSelf={member.account.id === viewer?.id}
            mayChange={role === "admin"}
          />
        )}
      />
      {role === "admin" && (
        <>
          <Invite organization={organization.id} />
          <OpenInvitations organization={organization.id} />
        </>
      )}
    </Panel>
  );
};

/** The organizations a person belongs to, their members, and inviting another. */
export const Organization = () => {
  const t = useText();
  const account = useAccount();
  return (
    <Page title={t("organization.title")} narrow>
      {account?.memberships.map((membership) => (
        <OneOrganization key={membership.organization.id} membership={membership} />
      ))}
    </Page>
  );
};
