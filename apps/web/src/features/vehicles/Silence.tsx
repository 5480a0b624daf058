import type { VehicleForm } from "@evenhand/shared/report";
import { useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { decisive } from "../../entities/comparison/terms";
import { documentQuery } from "../../entities/report/queries";
import { sheetQuery, worstOfSheet } from "../../entities/sheet/load-sheet";
import { placeKey, placesFor } from "../../entities/sheet/places";
import styles from "./Car.module.css";

interface Props {
  readonly version: string;
  readonly form: VehicleForm;
}

/** What the dealer was silent about is visible as silent: how much of each section is stated, and the decisive items that are not. */
export const Silence = ({ version, form }: Props) => {
  const t = useText();
  const intl = useIntl();
  const document = useQuery(documentQuery(version)).data;
  const worstOf = useQuery(worstOfSheet).data;
  const index = useQuery({
    ...sheetQuery(document?.sheet.id ?? "", document?.sheet.version ?? 0),
    enabled: document !== undefined,
  }).data;
  if (!document || !index || !worstOf) return null;
  const spoken = [...document.findings, ...("withheld" in document ? document.withheld : [])];
  const stated = new Set(spoken.map(({ item, position }) => placeKey(item, position)));
  const places = placesFor(index, form);
  const silentItems = [
    ...new Set(
      places
        .filter(
          ({ item, position, key }) =>
            item.core && !stated.has(key) && decisive.has(worstOf(item.id, position)),
        )
        .map(({ item }) => item.words.american),
    ),
  ];
  return (
    <div className={styles.silence}>
      <h3>{t("silence.title", { stated: stated.size, all: places.length })}</h3>
      <ul className={styles.bars}>
        {index.sheet.sections.map(({ id, words }) => {
          const all = places.filter(({ item }) => item.section === id);
          const said = all.filter(({ key }) => stated.has(key)).length;
          if (all.length === 0) return null;
          return (
            <li key={id}>
              <span>{words.american}</span>
              <span className={styles.track} aria-hidden="true">
                <span style={{ width: `${(said / all.length) * 100}%` }} />
              </span>
              <span className={styles.ratio}>{t("coverage.ratio", { part: said, whole: all.length })}</span>
            </li>
          );
        })}
      </ul>
      {silentItems.length > 0 && (
        <p className={styles.names}>
          {t("silence.names", {
            count: silentItems.length,
            names: intl.formatList(silentItems.slice(0, 12)),
          })}
          {silentItems.length > 12 && ` ${t("silence.more", { count: silentItems.length - 12 })}`}{" "}
          <Link to="/report-versions/$version" params={{ version }} search={{ show: "silent" }}>
            {t("silence.all")}
          </Link>
        </p>
      )}
    </div>
  );
};
