import type { Place } from "@evenhand/shared/booking";
import { useText } from "../../strings/text";
import styles from "./DayRoute.module.css";

interface Props {
  readonly base: Place;
  readonly stops: readonly { readonly name: string; readonly place: Place }[];
}

const WIDTH = 320;
const HEIGHT = 200;
const EDGE = 26;

/** Onto the drawing: true in direction and distance round the base (equirectangular at its latitude), north up. */
const projection = (places: readonly Place[]) => {
  const first = places[0] ?? { latitude: 0, longitude: 0 };
  const shrink = Math.cos((first.latitude * Math.PI) / 180);
  const flat = places.map(({ latitude, longitude }) => ({ x: longitude * shrink, y: -latitude }));
  const xs = flat.map(({ x }) => x);
  const ys = flat.map(({ y }) => y);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const scale = Math.min(
    (WIDTH - 2 * EDGE) / Math.max(wide, 1e-9),
    (HEIGHT - 2 * EDGE) / Math.max(high, 1e-9),
  );
  return flat.map(({ x, y }) => ({
    x: (WIDTH - wide * scale) / 2 + (x - left) * scale,
    y: (HEIGHT - high * scale) / 2 + (y - top) * scale,
  }));
};

type Point = ReturnType<typeof projection>[number];

const Base = ({ at: { x, y } }: { readonly at: Point }) => {
  const t = useText();
  return (
    <>
      <rect x={x - 7} y={y - 7} width={14} height={14} rx={2} />
      <text x={x + 11} y={y + 16}>
        {t("day.base")}
      </text>
    </>
  );
};

const StopMark = ({ at: { x, y }, number }: { readonly at: Point; readonly number: number }) => (
  <g>
    <circle cx={x} cy={y} r={9} />
    <text x={x} y={y + 4} className={styles.inside}>
      {number}
    </text>
  </g>
);

/** The way as a drawing; the list beside it says the same. */
export const RouteMap = ({ base, stops }: Props) => {
  const t = useText();
  const [home, ...points] = projection([base, ...stops.map(({ place }) => place)]);
  if (!home) return null;
  const way = [home, ...points, home];
  const named = stops.map(({ name }, index) => t("day.stop", { number: index + 1, site: name }));
  return (
    <svg
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      className={styles.map}
      role="img"
      aria-label={[t("day.base"), ...named].join(", ")}
    >
      <path d={`M${way.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}`} />
      <Base at={home} />
      {points.map((point, index) => (
        <StopMark key={`${point.x} ${point.y}`} at={point} number={index + 1} />
      ))}
    </svg>
  );
};
