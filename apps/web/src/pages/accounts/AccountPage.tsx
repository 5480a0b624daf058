import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Page } from "../../ui/Page";
import { ChangePassword } from "../../features/accounts/ChangePassword";
import { CloseAccount } from "../../features/accounts/CloseAccount";
import { NewsByMail } from "../../features/accounts/NewsByMail";
import { useAccount } from "../../entities/account/queries";

/** The person's own account: what comes by mail, the password, the devices, and the end of it. */
export const AccountPage = () => {
  const t = useText();
  const account = useAccount();
  if (!account) return null;
  return (
    <Page
      title={t("account.title")}
      under={t("account.for", { name: account.name, email: account.email })}
      actions={
        <LinkButton variant="default" to="/sessions">
          {t("nav.sessions")}
        </LinkButton>
      }
      narrow
    >
      <NewsByMail />
      <ChangePassword />
      <CloseAccount account={account.id} />
    </Page>
  );
};
