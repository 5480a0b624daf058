import type { VehicleForm } from "@evenhand/shared/report";
import type { Section } from "@evenhand/shared/sheet";
import { applicablePlaces } from "@evenhand/sheet/expand";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import type { CarriedSheet, SheetAct } from "./carried-sheet";
import { placeKey } from "./findings";
import styles from "./HandOvers.module.css";
import { PlaceRow } from "./PlaceRow";
import type { CarriedPictures } from "./use-carried-pictures";

type Places = ReturnType<typeof applicablePlaces>;

export const placesOf = (index: SheetIndex, form: VehicleForm): Places => applicablePlaces(index.sheet, form);

interface Props {
  readonly index: SheetIndex;
  readonly places: Places;
  readonly sheet: CarriedSheet;
  readonly pictures: CarriedPictures;
  readonly onFill: (done: SheetAct) => void;
}

/** What can hurt somebody at these tasks, before them. */
const Cautions = ({ index, places }: Pick<Props, "index" | "places">) => {
  const ids = [...new Set(places.flatMap(({ item }) => item.cautions))];
  if (ids.length === 0) return null;
  return (
    <Notice kind="caution">
      {ids.map((id) => (
        <p key={id}>{index.cautions.get(id)?.text}</p>
      ))}
    </Notice>
  );
};

const Row = ({ index, sheet, pictures, onFill, place }: Props & { readonly place: Places[number] }) => {
  const { item, position } = place;
  const key = placeKey(item.id, position);
  return (
    <PlaceRow
      item={item}
      position={position}
      index={index}
      answer={sheet.said[key]}
      unread={sheet.unread[key]}
      note={sheet.notes[key] ?? ""}
      pictures={pictures}
      onSay={(answer, unread) => onFill({ act: "say", key, answer, unread })}
      onNote={(note) => onFill({ act: "note", key, note })}
    />
  );
};

const SheetSection = ({ section, ...props }: Props & { readonly section: Section }) => {
  const items = [...new Set(props.places.map(({ item }) => item))];
  return (
    <Panel title={section.words.american}>
      <Cautions index={props.index} places={props.places} />
      {items.map((item) => (
        <div key={item.id}>
          <p className={styles.hint}>{item.how}</p>
          <ul className={styles.places}>
            {props.places
              .filter((place) => place.item === item)
              .map((place) => (
                <Row key={placeKey(item.id, place.position)} {...props} place={place} />
              ))}
          </ul>
        </div>
      ))}
    </Panel>
  );
};

/** The transport sheet, section by section, in the order a driver works. */
export const TransportSheet = (props: Props) =>
  props.index.sheet.sections.map((section) => (
    <SheetSection
      key={section.id}
      {...props}
      section={section}
      places={props.places.filter(({ item }) => item.section === section.id)}
    />
  ));
