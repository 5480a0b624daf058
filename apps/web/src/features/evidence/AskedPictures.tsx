import type { MissingPicture } from "@evenhand/shared/http/evidence";
import { Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { placeKey } from "../../entities/sheet/places";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import styles from "./AskedPictures.module.css";

interface Props {
  readonly report: string;
  readonly missing: readonly MissingPicture[];
  readonly index: SheetIndex;
}

/** The pictures that the sheet asks for by name and that are not there, each with the way to its line. */
export const AskedPictures = ({ report, missing, index }: Props) => {
  const t = useText();
  return (
    <Panel title={t("gallery.asked")}>
      <p>
        {missing.length === 0
          ? t("gallery.asked.all")
          : t("gallery.asked.missing", { count: missing.length })}
      </p>
      <ul className={styles.missing}>
        {missing.map(({ item, position, as, words }) => (
          <li key={`${item} ${as}`}>
            <Link
              to="/reports/$report"
              params={{ report }}
              search={{ section: index.items.get(item)?.section, open: placeKey(item, position) }}
            >
              {words}
            </Link>
          </li>
        ))}
      </ul>
    </Panel>
  );
};
