import { Outlet } from "@tanstack/react-router";
import { useText } from "../strings/text";
import { Header } from "./Header";
import styles from "./Shell.module.css";
import { TakeAwaitedTitle } from "../ui/title-focus";
import { Uploads } from "./Uploads";
import { useAwaitedTitle } from "./use-awaited-title";

/** Header, page and foot. After going to another page the focus goes to its title, as it would on a page loaded anew. */
export const Shell = () => {
  const t = useText();
  return (
    <TakeAwaitedTitle value={useAwaitedTitle()}>
      <div className={styles.shell}>
        <a className={styles.skip} href="#main">
          {t("app.skip")}
        </a>
        <Header />
        <main id="main" tabIndex={-1} className={styles.main}>
          <Outlet />
        </main>
        <Uploads />
        <footer className={styles.foot}>
          {t("app.foot")} <a href="/notices.txt">{t("app.notices")}</a>
        </footer>
      </div>
    </TakeAwaitedTitle>
  );
};
