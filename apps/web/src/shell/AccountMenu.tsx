import type { Account } from "@evenhand/shared/http/accounts";
import { useMantineColorScheme, type MantineColorScheme } from "@mantine/core";
import { Link } from "@tanstack/react-router";
import { useRef } from "react";
import { useText } from "../strings/text";
import styles from "./AccountMenu.module.css";
import { accountLinks, offered } from "./links";
import { SignOut } from "./SignOut";

const schemes = ["auto", "light", "dark"] as const satisfies readonly MantineColorScheme[];

const SchemeChoice = () => {
  const t = useText();
  const { colorScheme, setColorScheme } = useMantineColorScheme();
  return (
    <fieldset className={styles.schemes}>
      <legend>{t("app.scheme")}</legend>
      {schemes.map((scheme) => (
        <label key={scheme}>
          <input
            type="radio"
            name="color-scheme"
            checked={colorScheme === scheme}
            onChange={() => setColorScheme(scheme)}
          />
          {t(`app.scheme.${scheme}`)}
        </label>
      ))}
    </fieldset>
  );
};

/** The name; on a phone its first letters, for the eye alone. */
const AccountName = ({ name }: { readonly name: string }) => (
  <>
    <span className={styles.name}>{name}</span>
    <span className={styles.initials} aria-hidden="true">
      {name
        .split(" ")
        .map((word) => word.slice(0, 1))
        .slice(0, 2)
        .join("")}
    </span>
  </>
);

/** The browser's own popover: it opens on the top layer, closes on Escape and on a click beside it. */
export const AccountMenu = ({ account }: { readonly account: Account | null }) => {
  const t = useText();
  const panel = useRef<HTMLDivElement>(null);
  const close = (): void => panel.current?.hidePopover();
  return (
    <div className={styles.menu}>
      <button type="button" className={styles.opener} popoverTarget="account-menu">
        {account ? <AccountName name={account.name} /> : t("app.scheme")}
      </button>
      <div id="account-menu" popover="auto" ref={panel} className={styles.panel}>
        {account && (
          <>
            <p className={styles.email}>{account.email}</p>
            {offered(accountLinks, account).map(({ to, words }) => (
              <Link key={to} to={to} onClick={close}>
                {t(words, { count: account.unread })}
              </Link>
            ))}
          </>
        )}
        <SchemeChoice />
        {account && <SignOut account={account.id} onAsk={close} />}
      </div>
    </div>
  );
};
