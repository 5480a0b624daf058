import { memo } from "react";
import { useText } from "../../strings/text";
import { Tag } from "../../ui/Page";
import { Cautions } from "../../entities/sheet/Cautions";
import styles from "./ItemCard.module.css";
import { ItemPlace, type OfItem } from "./ItemPlace";
import { lastSaid } from "./last-said";
import type { ItemGroup } from "./sheet-view";

interface Props extends OfItem {
  readonly group: ItemGroup;
}

const ItemHead = ({ item }: Pick<ItemGroup, "item">) => {
  const t = useText();
  return (
    <header className={styles.head}>
      <h3>{item.words.american}</h3>
      <p className={styles.tags}>
        <Tag>{t(`consequence.${item.consequence}`)}</Tag>
        {item.core && <Tag>{t("item.core")}</Tag>}
        {item.needs.map((need) => (
          <Tag key={need}>{t(`need.${need}`)}</Tag>
        ))}
      </p>
      <p className={styles.how}>{item.how}</p>
    </header>
  );
};

/** One item of the sheet with all its positions. Its cautions stand before them. */
export const ItemCard = memo(({ group: { item, places }, ...rest }: Props) => {
  const { index, findings } = rest;
  const said = lastSaid(places.map(({ key }) => findings.get(key)?.finding).filter((finding) => !!finding));
  return (
    <section className={styles.card} id={`item-${item.id}`}>
      <ItemHead item={item} />
      <Cautions index={index} ids={item.cautions} />
      <ul className={styles.places}>
        {places.map((place) => (
          <ItemPlace key={place.key} {...rest} place={place} said={said} />
        ))}
      </ul>
    </section>
  );
});
ItemCard.displayName = "ItemCard";
