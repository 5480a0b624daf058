/** Panels of a car laid open flat, nose up: x, y, width, height in a drawing 190 by 300. */
export const panelShapes: Readonly<
  Record<string, readonly [x: number, y: number, width: number, height: number]>
> = {
  "nose-panel": [52, 2, 86, 20],
  hood: [52, 24, 86, 66],
  cowl: [52, 92, 86, 16],
  roof: [52, 110, 86, 82],
  "trunk-lid": [52, 210, 86, 64],
  tailgate: [52, 210, 86, 64],
  "tail-panel": [52, 276, 86, 20],
  "left-front-fender": [18, 24, 32, 72],
  "left-front-door": [18, 98, 32, 54],
  "left-rear-door": [18, 154, 32, 46],
  "left-quarter": [18, 202, 32, 74],
  "left-rocker": [2, 98, 14, 102],
  "right-front-fender": [140, 24, 32, 72],
  "right-front-door": [140, 98, 32, 54],
  "right-rear-door": [140, 154, 32, 46],
  "right-quarter": [140, 202, 32, 74],
  "right-rocker": [174, 98, 14, 102],
};
