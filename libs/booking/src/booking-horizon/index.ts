const DAY = 86_400_000;

/** How far ahead hours are offered, and laid out when they are saved: 250 days, in milliseconds. */
export const BOOKING_HORIZON = 250 * DAY;
/** How far back days are shown: three years, in milliseconds. */
export const LOOKING_BACK = 3 * 366 * DAY;
