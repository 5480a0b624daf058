/** A word of place: `adds` are the parts of a position's id it asks for, `all` every one there is. */
export type SideWords = {
  readonly id: string;
  readonly adds: readonly string[];
  readonly words: readonly string[];
};

const side = (id: string, words: string, ...adds: readonly string[]): SideWords => ({
  id,
  adds: adds.length > 0 ? adds : [id],
  words: words.split(";").map((one) => one.trim()),
});

/**
 * Left is the driver's left. `driver` and `passenger` hang on the side of the wheel; `near` is left and `off` right, as the British say.
 */
export const sides: readonly SideWords[] = [
  side("left", "left; left hand; left side; left hand side; lh; lhs; l h; on the left"),
  side("right", "right hand; right side; right hand side; right; rh; rhs; r h; on the right"),
  side("driver", "driver (side); driver s side; drivers side; driver s; my side"),
  side("passenger", "passenger (side); passenger s side; passengers side; passenger s"),
  side("left", "nearside; near side; n s", "left"),
  side("right", "offside; off side; o s", "right"),
  // Where somebody's feet are.
  side(
    "driver",
    "by the pedal; near the pedal; under the pedal; under your heel; by your heel",
    "driver",
    "front",
  ),
  side("driver-rear", "behind the driver; behind the driver seat", "driver", "rear"),
  side("passenger-rear", "behind the passenger; behind the passenger seat", "passenger", "rear"),
  side("front", "front; in front; up front; at the front; forward; front end; frt"),
  side("rear", "rear; back; behind; at the back; in the back; at the rear; aft; rr end"),
  side("left-front", "lf; fl; on the left front; left front; front left; n s f; nsf; l f", "left", "front"),
  side(
    "right-front",
    "rf; fr; on the right front; right front; front right; o s f; osf; r f",
    "right",
    "front",
  ),
  side(
    "left-rear",
    "lr; rl; on the left rear; left rear; rear left; left back; back left; left behind; n s r; nsr; l r",
    "left",
    "rear",
  ),
  side(
    "right-rear",
    "rr; on the right rear; right rear; rear right; right back; back right; right behind; o s r; osr; r r",
    "right",
    "rear",
  ),
  side("upper", "upper"),
  side("lower", "lower"),
  side("inner", "inner"),
  side("outer", "outer"),
  side(
    "all",
    "all four; all five; all six; all eight; all around; all round; all the way around; all of them; each; every; every one; all four corners; on each; across the board; everywhere; all corners; all the way round; all over; all; either; neither side; throughout; all the way back; front to back; front and rear; front and back; fore and aft; left and right; both front and rear",
  ),
  side("both", "both; both of them; both side; each side; either side; pair"),
  side(
    "other",
    "other; the other; other three; other two; rest; the rest; others; other side; everything else; everywhere else; elsewhere; other one",
  ),
  side("this", "this side; that side; on this side; this one"),
  side("spare", "spare"),
];
