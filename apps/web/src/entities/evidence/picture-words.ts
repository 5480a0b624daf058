import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { useItemWords } from "../sheet/item-words";
import type { AtPlace, Picture } from "./pictures";

interface PictureWords {
  /** What a picture shows to somebody who does not see it: item, place, side, and when it was taken where that is known. */
  (picture: Picture): string;
  readonly place: (at: AtPlace) => string;
}

export const usePictureWords = (): PictureWords => {
  const t = useText();
  const intl = useIntl();
  const words = useItemWords();
  const place = (at: AtPlace): string => (at.item === "" ? t("evidence.whole-car") : words(at));
  const whole = (picture: Picture): string => {
    const { side, taken = null, caption } = picture;
    const what = t("evidence.alt", { place: place(picture), side });
    const said = caption === null ? what : t("evidence.alt.caption", { what, caption });
    if (taken === null) return said;
    // The camera's own clock: no zone is known, and none is reckoned in.
    const time = intl.formatDate(`${taken}Z`, { dateStyle: "medium", timeStyle: "short", timeZone: "UTC" });
    return t("evidence.alt.taken", { what: said, time });
  };
  return Object.assign(whole, { place });
};
