import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import type { SheetIndex } from "./sheet-index";

/** Cautions at the task, before it. */
export const Cautions = ({ index, ids }: { readonly index: SheetIndex; readonly ids: readonly string[] }) => {
  const t = useText();
  const texts = ids.map((id) => index.cautions.get(id)?.text).filter((text) => text !== undefined);
  if (texts.length === 0) return null;
  return (
    <Notice kind="caution" title={t("caution.before")}>
      {texts.length === 1 ? (
        <p>{texts[0]}</p>
      ) : (
        <ul>
          {texts.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
    </Notice>
  );
};
