declare module "integrate-adaptive-simpson" {
  /** Integral of a function from a to b by adaptive Simpson's rule. */
  const integrate: (
    of: (x: number) => number,
    from: number,
    to: number,
    tolerance?: number,
    maxDepth?: number,
  ) => number;
  export default integrate;
}
