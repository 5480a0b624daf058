import { NativeSelect } from "@mantine/core";
import { DEPTHS, type Stage } from "@evenhand/shared/sheet";
import { useText } from "../../../strings/text";
import { ViewSwitch } from "../ViewSwitch";
import sheet from "../Sheet.module.css";
import type { Extent, Progress, WalkStage } from "../walk";

interface Props {
  readonly walk: readonly WalkStage[];
  readonly current: Stage;
  readonly parts: ReadonlyMap<Stage, Progress>;
  readonly extent: Extent;
  readonly hasBrief: boolean;
  readonly onExtent: (extent: Extent) => void;
  readonly onGo: (stage: Stage) => void;
  readonly onSections: () => void;
}

/** How the sheet is walked, how much of it is taken, and its stages with what is answered of each. */
export const StageRail = ({ walk, current, parts, extent, hasBrief, ...on }: Props) => {
  const t = useText();
  const extents: readonly Extent[] = hasBrief ? ["brief", ...DEPTHS] : DEPTHS;
  return (
    <nav className={sheet.rail} aria-label={t("walk.stages")}>
      <ViewSwitch view="stages" onView={on.onSections} />
      <NativeSelect
        size="md"
        label={t("walk.extent")}
        value={extent}
        onChange={(event) => on.onExtent(extents.find((one) => one === event.currentTarget.value) ?? extent)}
        data={extents.map((value) => ({ value, label: t(`walk.extent.${value}`) }))}
      />
      <ol className={sheet.sections}>
        {walk.map(({ stage }, at) => (
          <li key={stage}>
            <button
              type="button"
              aria-current={stage === current ? "step" : undefined}
              onClick={() => on.onGo(stage)}
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
    </nav>
  );
};
