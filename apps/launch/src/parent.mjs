/**
 * Calls `act` when the process that started this one is gone, killed perhaps, so that nothing is left running behind it. Gives a
 * function that lets go of the other process, for the end.
 */
export function whenParentIsGone(act) {
  if (process.channel === undefined || process.channel === null) return () => undefined;
  process.once("disconnect", act);
  process.channel.unref();
  return () => {
    process.removeListener("disconnect", act);
    if (process.connected) process.disconnect();
  };
}
