import { convert } from "@evenhand/measurement/unit";
import type { Instrument } from "@evenhand/shared/report";
import { UNITS, type UnitSymbol, UnitSymbol as UnitSymbols } from "@evenhand/shared/unit";
import type { InstrumentKind } from "@evenhand/sheet/instrument-kinds";

export type FigureField = "resolution" | "within" | "share";

/** What stands in the form of an instrument. */
export interface InstrumentTyped {
  readonly name: string;
  readonly kind: string;
  readonly unit: UnitSymbol;
  readonly calibrated: string;
  readonly figures: Readonly<Record<FigureField, number | undefined>>;
  /** Figures typed that cannot be read. */
  readonly unread: Readonly<Partial<Record<FigureField, string>>>;
}

/** An id made of the name: lower case, digits and hyphens, unlike any that is taken. */
const idFromName = (name: string, taken: readonly string[]): string => {
  const base =
    name
      .toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, "-")
      .replaceAll(/^-+|-+$/g, "")
      .slice(0, 50) || "instrument";
  const count = Array.from({ length: taken.length + 1 }, (_, at) => (at === 0 ? base : `${base}-${at + 1}`));
  return count.find((id) => !taken.includes(id)) ?? base;
};

/** The figures of an instrument as one unit shows them. */
const figuresOf = (initial: Instrument | undefined) => {
  const absolute = initial?.accuracy?.absolute;
  const unit = initial?.resolution?.unit ?? absolute?.unit ?? "mm";
  const share = initial?.accuracy?.share ?? 0;
  return {
    unit,
    resolution: initial?.resolution?.value,
    within:
      absolute === undefined || absolute.unit === unit
        ? absolute?.value
        : Number(convert(absolute.value, absolute.unit, unit).toPrecision(6)),
    // A share of 0.003 is 0.3 %, not 0.30000000000000004.
    share: share === 0 ? undefined : Number((share * 100).toPrecision(12)),
  };
};

export const typedOf = (initial: Instrument | undefined): InstrumentTyped => {
  const { unit, ...figures } = figuresOf(initial);
  const { name = "", kind = "", calibrated = "" } = initial ?? {};
  return { name, kind, unit, calibrated, figures, unread: {} };
};

/** The units figures may be typed in: those of the kind, and the one it was. */
export const unitsOf = (
  kinds: readonly InstrumentKind[] | undefined,
  chosen: string,
  was: UnitSymbol,
): readonly UnitSymbol[] => {
  const kind = kinds?.find(({ name }) => name === chosen);
  if (kind === undefined) return UnitSymbols.options;
  return kind.dimensions.includes(UNITS[was].dimension) ? [...new Set([...kind.units, was])] : kind.units;
};

/** Another kind brings its usual unit, but not under a figure that stands there already: it would say another thing. */
export const withKind = (
  typed: InstrumentTyped,
  kind: string,
  kinds: readonly InstrumentKind[] | undefined,
): InstrumentTyped => {
  const usual = kinds?.find(({ name }) => name === kind)?.units[0];
  const { resolution, within } = typed.figures;
  const takes = usual !== undefined && resolution === undefined && within === undefined;
  return { ...typed, kind, unit: takes ? usual : typed.unit };
};

export const withFigure = (
  typed: InstrumentTyped,
  field: FigureField,
  value: number | undefined,
  text: string | undefined,
): InstrumentTyped => {
  const { [field]: _was, ...unread } = typed.unread;
  return {
    ...typed,
    figures: { ...typed.figures, [field]: value },
    unread: text === undefined ? unread : { ...unread, [field]: text },
  };
};

/** Can it be kept as it stands? */
export const isWhole = ({ name, kind, unread }: InstrumentTyped, asksKind: boolean): boolean =>
  name.trim() !== "" && Object.keys(unread).length === 0 && !(asksKind && kind === "");

const accuracyOf = (
  { within, share }: InstrumentTyped["figures"],
  unit: UnitSymbol,
): Instrument["accuracy"] =>
  within === undefined && share === undefined
    ? undefined
    : {
        share: Number(((share ?? 0) / 100).toPrecision(12)),
        ...(within === undefined ? {} : { absolute: { value: within, unit } }),
      };

/** The instrument that was typed: under its own id where it has one, else under one made of its name. */
export const instrumentOf = (
  { name, kind, calibrated, figures }: InstrumentTyped,
  unit: UnitSymbol,
  id: { readonly own?: string | undefined; readonly taken: readonly string[] },
): Instrument => {
  const { resolution } = figures;
  const accuracy = accuracyOf(figures, unit);
  return {
    id: id.own ?? idFromName(name, id.taken),
    name: name.trim(),
    ...(resolution === undefined ? {} : { resolution: { value: resolution, unit } }),
    ...(accuracy === undefined ? {} : { accuracy }),
    ...(calibrated === "" ? {} : { calibrated }),
    ...(kind === "" ? {} : { kind }),
  };
};
