import type { Account } from "@evenhand/shared/http/accounts";
import { Link } from "@tanstack/react-router";
import { useAccount } from "../entities/account/queries";
import { useText } from "../strings/text";
import { AccountMenu } from "./AccountMenu";
import { headerLinks, offered } from "./links";
import styles from "./Shell.module.css";

const Mark = () => (
  <svg viewBox="0 0 32 32" width="26" height="26" aria-hidden="true" className={styles.mark}>
    <path className={styles.markSpine} d="M16 3v26" />
    <path d="M4 12h8M4 20h8M20 12h8M20 20h8" />
  </svg>
);

/** The pages of each kind of person, in a row. */
const Menu = ({ account }: { readonly account: Account }) => {
  const t = useText();
  return (
    <nav aria-label={t("app.menu")} className={styles.nav}>
      {offered(headerLinks, account).map(({ to, words }) => (
        <Link key={to} to={to} activeOptions={{ exact: to === "/" }}>
          {t(words)}
        </Link>
      ))}
    </nav>
  );
};

/** How many notices are not read yet; nothing where there is none. */
const News = ({ unread }: { readonly unread: number }) => {
  const t = useText();
  if (unread === 0) return null;
  return (
    <Link to="/notices" className={styles.news} aria-label={t("notices.head.whole", { count: unread })}>
      {t("notices.head", { count: unread })}
    </Link>
  );
};

export const Header = () => {
  const t = useText();
  const account = useAccount();
  return (
    <header className={`${styles.header} no-print`}>
      <Link to="/" className={styles.brand}>
        <Mark />
        <span>{t("app.name")}</span>
      </Link>
      {account && <Menu account={account} />}
      {account && <News unread={account.unread} />}
      <AccountMenu account={account} />
    </header>
  );
};
