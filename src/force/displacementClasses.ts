/** @internal Classes of displacement with what they allow: error and resolution as a share or in mm, whichever is more; error of the base as a share (ISO 9513, from memory). */
export const displacementClasses = (
  [
    [0.2, 0.002, 0.0006, 0.001, 0.0002, 0.002],
    [0.5, 0.005, 0.0015, 0.0025, 0.0005, 0.005],
    [1, 0.01, 0.003, 0.005, 0.001, 0.01],
    [2, 0.02, 0.006, 0.01, 0.002, 0.02],
  ] as const
).map(([displacementClass, share, length, resolutionShare, resolution, base]) => ({
  displacementClass,
  share,
  length,
  resolutionShare,
  resolution,
  base,
}));
