/** The odometer as it stands. */
export const ODOMETER = "identity.odometer";
