import type { SharedPicture } from "@evenhand/shared/http/publishing";
import { capital, type SheetIndex } from "../../entities/sheet/sheet-index";
import { sheetWords } from "@evenhand/wording/sheet-words";
import { addressOf } from "../../service/client";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { SmallPicture } from "../../ui/SmallPicture";
import styles from "./Publishing.module.css";

interface Props {
  readonly token: string;
  readonly pictures: readonly SharedPicture[];
  readonly index: SheetIndex;
}

/** The statement's photographs by place; pressed, one is shown large beside this page. Nothing where there is none. */
export const SharedPictures = ({ token, pictures, index }: Props) => {
  const t = useText();
  const words = sheetWords(index.sheet);
  if (pictures.length === 0) return null;
  return (
    <Panel title={t("shared.pictures")}>
      <ul className={styles.pictures}>
        {pictures.map(({ id, item, position, caption }) => {
          const name = item === "" ? t("evidence.whole-car") : capital(words.place(item, position));
          return (
            <li key={id}>
              <SmallPicture
                small={addressOf("sharedStatements.small", { token, id })}
                large={addressOf("sharedStatements.large", { token, id })}
                name={t("shared.picture", { place: name })}
              />
              <p>{caption === null ? name : `${name}: ${caption}`}</p>
            </li>
          );
        })}
      </ul>
    </Panel>
  );
};
