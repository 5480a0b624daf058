import type { Account } from "@evenhand/shared/http/accounts";
import { useMantineColorScheme, type MantineColorScheme } from "@mantine/core";
import { useQueryClient } from "@tanstack/react-query";
import { Link, useNavigate } from "@tanstack/react-router";
import { useRef } from "react";
import { isKind } from "../features/accounts/queries";
import { becomes } from "../features/accounts/queries";
import { forgetDevice } from "../offline/forget";
import { call } from "../service/client";
import { useText } from "../strings/text";
import styles from "./AccountMenu.module.css";

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

/** The browser's own popover: it opens on the top layer, closes on Escape and on a click beside it. */
export const AccountMenu = ({ account }: { readonly account: Account | null }) => {
  const t = useText();
  const queries = useQueryClient();
  const navigate = useNavigate();
  const panel = useRef<HTMLDivElement>(null);
  const close = (): void => panel.current?.hidePopover();
  const leave = async (): Promise<void> => {
    close();
    await call("sessions.end");
    await forgetDevice();
    becomes(queries, null);
    await navigate({ to: "/sign-in" });
  };
  return (
    <div className={styles.menu}>
      <button type="button" className={styles.opener} popoverTarget="account-menu">
        {account ? account.name : t("app.scheme")}
      </button>
      <div id="account-menu" popover="auto" ref={panel} className={styles.panel}>
        {account && (
          <>
            <p className={styles.email}>{account.email}</p>
            <Link to="/handbook" onClick={close}>
              {t("nav.handbook")}
            </Link>
            {isKind(account, "inspector") && (
              <Link to="/calendars" onClick={close}>
                {t("nav.calendars")}
              </Link>
            )}
            {isKind(account, "dealer") && (
              <Link to="/sites" onClick={close}>
                {t("nav.sites")}
              </Link>
            )}
            <Link to="/complaints" onClick={close}>
              {t("nav.complaints")}
            </Link>
            <Link to="/organization" onClick={close}>
              {t("nav.organization")}
            </Link>
            <Link to="/account" onClick={close}>
              {t("nav.account")}
            </Link>
            <Link to="/sessions" onClick={close}>
              {t("nav.sessions")}
            </Link>
          </>
        )}
        <SchemeChoice />
        {account && (
          <button type="button" className={styles.leave} onClick={() => void leave()}>
            {t("nav.sign-out")}
          </button>
        )}
      </div>
    </div>
  );
};
