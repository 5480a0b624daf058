/** Photographs as the service takes them: a telephone that keeps them in a form of its own makes a JPEG where these are asked for. */
export const PHOTOGRAPHS = "image/jpeg,image/png,image/webp,image/avif";

/** What was chosen. The same file may be chosen again after it was taken away. */
export const filesFrom = (input: HTMLInputElement): readonly File[] => {
  const files = [...(input.files ?? [])];
  input.value = "";
  return files;
};
