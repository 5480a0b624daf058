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

/** What silence is read from; undefined until all of it is there. */
const useSources = (version: string) => {
  const document = useQuery(documentQuery(version)).data;
  const worstOf = useQuery(worstOfSheet).data;
  const index = useQuery({
    ...sheetQuery(document?.sheet.id ?? "", document?.sheet.version ?? 0),
    enabled: document !== undefined,
  }).data;
  return document && index && worstOf ? { document, index, worstOf } : undefined;
};
type Sources = NonNullable<ReturnType<typeof useSources>>;

/** Where something is stated, of all places this car has, and the decisive items that are not. */
const statedOf = ({ document, index, worstOf }: Sources, form: VehicleForm) => {
  const spoken = [...document.findings, ...("withheld" in document ? document.withheld : [])];
  const stated = new Set(spoken.map(({ item, position }) => placeKey(item, position)));
  const places = placesFor(index, form);
  const silent = places.filter(
    ({ item, position, key }) => item.core && !stated.has(key) && decisive.has(worstOf(item.id, position)),
  );
  return { stated, places, silentItems: [...new Set(silent.map(({ item }) => item.words.american))] };
};
type Stated = ReturnType<typeof statedOf>;

interface SectionsProps extends Pick<Stated, "stated" | "places"> {
  readonly sections: Sources["index"]["sheet"]["sections"];
}

/** How much of each section is stated. */
const Sections = ({ sections, stated, places }: SectionsProps) => {
  const t = useText();
  const counted = sections.map(({ id, words }) => {
    const all = places.filter(({ item }) => item.section === id);
    return { id, words, whole: all.length, part: all.filter(({ key }) => stated.has(key)).length };
  });
  return (
    <ul className={styles.bars}>
      {counted
        .filter(({ whole }) => whole > 0)
        .map(({ id, words, whole, part }) => (
          <li key={id}>
            <span>{words.american}</span>
            <span className={styles.track} aria-hidden="true">
              <span style={{ width: `${(part / whole) * 100}%` }} />
            </span>
            <span className={styles.ratio}>{t("coverage.ratio", { part, whole })}</span>
          </li>
        ))}
    </ul>
  );
};

/** More names than these are only counted. */
const NAMED = 12;

const SilentItems = ({ version, silentItems }: Pick<Props, "version"> & Pick<Stated, "silentItems">) => {
  const t = useText();
  const intl = useIntl();
  const count = silentItems.length;
  if (count === 0) return null;
  return (
    <p className={styles.names}>
      {t("silence.names", { count, names: intl.formatList(silentItems.slice(0, NAMED)) })}
      {count > NAMED && ` ${t("silence.more", { count: count - NAMED })}`}{" "}
      <Link to="/report-versions/$version" params={{ version }} search={{ show: "silent" }}>
        {t("silence.all")}
      </Link>
    </p>
  );
};

/** What the dealer was silent about is visible as silent: how much of each section is stated, and the decisive items that are not. */
export const Silence = ({ version, form }: Props) => {
  const t = useText();
  const sources = useSources(version);
  if (sources === undefined) return null;
  const { stated, places, silentItems } = statedOf(sources, form);
  return (
    <div className={styles.silence}>
      <h3>{t("silence.title", { stated: stated.size, all: places.length })}</h3>
      <Sections sections={sources.index.sheet.sections} stated={stated} places={places} />
      <SilentItems version={version} silentItems={silentItems} />
    </div>
  );
};
