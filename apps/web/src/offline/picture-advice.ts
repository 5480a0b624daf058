import { grayOfColors } from "@evenhand/evidence/gray";
import { MEASURED_SIDE, pictureAdvice, pictureQuality } from "@evenhand/evidence/picture-quality";
import type { KeptUpload } from "./store";

/** The picture's points, upright, no larger than it is measured. */
const pointsOf = async (file: Blob): Promise<ImageData | null> => {
  const whole = await createImageBitmap(file);
  const share = Math.min(1, MEASURED_SIDE / Math.max(whole.width, whole.height));
  const [width, height] = [whole.width, whole.height].map((side) => Math.max(1, Math.round(side * share)));
  const canvas = document.createElement("canvas");
  canvas.width = width ?? 1;
  canvas.height = height ?? 1;
  const drawing = canvas.getContext("2d", { willReadFrequently: true });
  if (drawing !== null) {
    drawing.imageSmoothingQuality = "high";
    drawing.drawImage(whole, 0, 0, canvas.width, canvas.height);
  }
  whole.close();
  return drawing?.getImageData(0, 0, canvas.width, canvas.height) ?? null;
};

/** A picture that takes longer to open is sent unseen: the service looks at it, too. */
const MOST_MS = 4_000;

const late = (): Promise<null> => new Promise((done) => void setTimeout(done, MOST_MS, null));

/**
 * What speaks for taking a photograph again, measured on this device as the service does it later. Nothing where the device cannot show
 * the file as a picture.
 */
export const adviceOn = async (file: Blob): Promise<NonNullable<KeptUpload["advice"]>> => {
  if (!file.type.startsWith("image/")) return [];
  try {
    const points = await Promise.race([pointsOf(file), late()]);
    return points === null ? [] : pictureAdvice(pictureQuality(grayOfColors(points)));
  } catch {
    return [];
  }
};
