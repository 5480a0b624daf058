import type { Membership } from "@evenhand/shared/http/accounts";
import { useInfiniteQuery } from "@tanstack/react-query";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";
import { useText } from "../../strings/text";
import { List } from "../../ui/List";
import { Empty, Page, Panel } from "../../ui/Page";
import { Invite } from "../../features/accounts/Invite";
import { MemberLine } from "../../features/accounts/Member";
import { OpenInvitations } from "../../features/accounts/OpenInvitations";
import { TakeAll } from "../../features/accounts/TakeAll";
import { useAccount } from "../../entities/account/queries";

const membersQuery = (organization: string) =>
  pagedQuery(["members", organization], (after, signal) =>
    call("organizations.members", { params: { id: organization }, query: { after }, signal }),
  );

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
          <TakeAll organization={organization.id} />
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
