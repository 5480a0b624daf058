/** Hands the person a file that was made here, under this name, as their browser does with any download. */
export const saveFile = (name: string, text: string): void => {
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // A while later: some browsers read the address only after the press has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
};
