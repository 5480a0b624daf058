/** Signing out wipes what this device holds. */
export const forgetDevice = async (): Promise<void> => {
  const { store } = await import("./store");
  await store.delete();
};
