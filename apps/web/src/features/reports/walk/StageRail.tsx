import { NativeSelect } from "@mantine/core";
import { DEPTHS } from "@evenhand/shared/sheet";
import { useText } from "../../../strings/text";
import { ViewSwitch } from "../ViewSwitch";
import sheet from "../Sheet.module.css";
import type { Extent } from "../walk";
import type { WalkMove, WalkView } from "./walk-view";

interface Props {
  readonly view: WalkView;
  readonly extent: Extent;
  readonly hasBrief: boolean;
  readonly onMove: (move: WalkMove) => void;
}

const ExtentChoice = ({ extent, hasBrief, onMove }: Omit<Props, "view">) => {
  const t = useText();
  const extents: readonly Extent[] = hasBrief ? ["brief", ...DEPTHS] : DEPTHS;
  return (
    <NativeSelect
      size="md"
      label={t("walk.extent")}
      value={extent}
      onChange={(event) => {
        const chosen = extents.find((one) => one === event.currentTarget.value) ?? extent;
        onMove({ type: "extent", extent: chosen });
      }}
      data={extents.map((value) => ({ value, label: t(`walk.extent.${value}`) }))}
    />
  );
};

const StageList = ({ view: { walk, stage: current, parts }, onMove }: Pick<Props, "view" | "onMove">) => {
  const t = useText();
  return (
    <ol className={sheet.sections}>
      {walk.map(({ stage }, at) => (
        <li key={stage}>
          <button
            type="button"
            aria-current={stage === current.stage ? "step" : undefined}
            onClick={() => onMove({ type: "stage", stage })}
          >
            <span className={sheet.number}>{at + 1}</span>
            <span>{t(`walk.stage.${stage}`)}</span>
            <span className={sheet.done}>
              {parts.get(stage)?.done ?? 0}/{parts.get(stage)?.all ?? 0}
            </span>
          </button>
        </li>
      ))}
    </ol>
  );
};

/** How the sheet is walked, how much of it is taken, and its stages with what is answered of each. */
export const StageRail = ({ view, extent, hasBrief, onMove }: Props) => {
  const t = useText();
  return (
    <nav className={sheet.rail} aria-label={t("walk.stages")}>
      <ViewSwitch view="stages" onView={() => onMove({ type: "sections" })} />
      <ExtentChoice extent={extent} hasBrief={hasBrief} onMove={onMove} />
      <StageList view={view} onMove={onMove} />
    </nav>
  );
};
