/** What was chosen. The same file may be chosen again after it was taken away. */
export const filesFrom = (input: HTMLInputElement): readonly File[] => {
  const files = [...(input.files ?? [])];
  input.value = "";
  return files;
};
