import { Outlet, useRouter } from "@tanstack/react-router";
import { useCallback, useEffect, useRef } from "react";
import { useText } from "../strings/text";
import { Header } from "./Header";
import styles from "./Shell.module.css";
import { TakeAwaitedTitle } from "../ui/title-focus";

/** Header, page and foot. After going to another page the focus goes to its title, as it would on a page loaded anew. */
export const Shell = () => {
  const t = useText();
  const router = useRouter();
  const awaited = useRef(false);
  const takeAwaited = useCallback((): boolean => {
    const was = awaited.current;
    awaited.current = false;
    return was;
  }, []);
  useEffect(
    () =>
      router.subscribe("onBeforeNavigate", ({ fromLocation, pathChanged }) => {
        if (fromLocation !== undefined && pathChanged) awaited.current = true;
      }),
    [router],
  );
  return (
    <TakeAwaitedTitle value={takeAwaited}>
      <div className={styles.shell}>
        <a className={styles.skip} href="#main">
          {t("app.skip")}
        </a>
        <Header />
        <main id="main" tabIndex={-1} className={styles.main}>
          <Outlet />
        </main>
        <footer className={styles.foot}>
          {t("app.foot")} <a href="/notices.txt">{t("app.notices")}</a>
        </footer>
      </div>
    </TakeAwaitedTitle>
  );
};
