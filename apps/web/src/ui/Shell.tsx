import { Outlet, useRouterState } from "@tanstack/react-router";
import { useEffect, useRef } from "react";
import { useText } from "../strings/text";
import { Header } from "./Header";
import styles from "./Shell.module.css";

/** Header, page and foot. After going to another page the focus goes to its title, as it would on a page loaded anew. */
export const Shell = () => {
  const t = useText();
  const path = useRouterState({ select: ({ location }) => location.pathname });
  const main = useRef<HTMLElement>(null);
  const shown = useRef(path);
  useEffect(() => {
    if (shown.current === path) return;
    shown.current = path;
    (main.current?.querySelector<HTMLElement>("h1[tabindex]") ?? main.current)?.focus({
      preventScroll: true,
    });
  }, [path]);
  return (
    <div className={styles.shell}>
      <a className={styles.skip} href="#main">
        {t("app.skip")}
      </a>
      <Header />
      <main id="main" ref={main} tabIndex={-1} className={styles.main}>
        <Outlet />
      </main>
      <footer className={styles.foot}>{t("app.foot")}</footer>
    </div>
  );
};
