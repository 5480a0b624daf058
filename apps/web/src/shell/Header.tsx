import { Link } from "@tanstack/react-router";
import { isKind, useAccount } from "../entities/account/queries";
import { useText } from "../strings/text";
import { AccountMenu } from "./AccountMenu";
import styles from "./Shell.module.css";

const Mark = () => (
  <svg viewBox="0 0 32 32" width="26" height="26" aria-hidden="true" className={styles.mark}>
    <path className={styles.markSpine} d="M16 3v26" />
    <path d="M4 12h8M4 20h8M20 12h8M20 20h8" />
  </svg>
);

export const Header = () => {
  const t = useText();
  const account = useAccount();
  const deals = isKind(account, "dealer");
  const buys = isKind(account, "buyer");
  const inspects = isKind(account, "inspector");
  const operates = isKind(account, "operator");
  return (
    <header className={`${styles.header} no-print`}>
      <Link to="/" className={styles.brand}>
        <Mark />
        <span>{t("app.name")}</span>
      </Link>
      {account && (
        <nav aria-label={t("app.menu")} className={styles.nav}>
          <Link to="/cars">{t("nav.cars")}</Link>
          {(buys || inspects || deals) && <Link to="/appointments">{t("nav.appointments")}</Link>}
          {(buys || inspects) && <Link to="/orders">{t("nav.orders")}</Link>}
          {(buys || deals) && <Link to="/released">{t("nav.released")}</Link>}
          {(buys || deals) && <Link to="/decisions">{t("nav.decisions")}</Link>}
          {(buys || deals) && <Link to="/questions">{t("nav.questions")}</Link>}
          {inspects && <Link to="/day">{t("nav.day")}</Link>}
          {operates && (
            <>
              <Link to="/admissions">{t("nav.admissions")}</Link>
              <Link to="/complaints">{t("nav.complaints")}</Link>
              <Link to="/appointments">{t("nav.appointments")}</Link>
            </>
          )}
          <Link to="/handbook" className={styles.wideOnly}>
            {t("nav.handbook")}
          </Link>
        </nav>
      )}
      <AccountMenu account={account} />
    </header>
  );
};
