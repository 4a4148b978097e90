import { fitModulusKernel } from '../../curve/index.js';
import type { TensionTask } from './tensionModel.js';
import { errorOfDrift, type KnownNoise } from './tensionNoise.js';

/**
 * @internal The test by the window that the search would take if it knew that the noise drifts: its lower bound takes off standard errors of
 * independent samples, too small by {@link errorOfDrift}, and so the steepest window follows the noise. Without drift, and where no bound
 * chose the window, the test as it is.
 */
export function withFairWindow(task: TensionTask, noise: KnownNoise): TensionTask {
  const { settings, recorded, numbers, top } = task;
  const criterion = numbers.line.ok ? numbers.line.criterion : undefined;
  if (criterion?.by !== 'lower-bound' || !(noise.correlation > 0)) return task;
  // the criterion of a line holds its defaults
  const window = { ...criterion, z: criterion.z! * errorOfDrift(noise) };
  const { strain, stress } = recorded;
  const line = fitModulusKernel({ strain, stress }, window, top < stress.length ? top : undefined);
  return line.ok ? { ...task, settings: { ...settings, window }, numbers: { ...numbers, line } } : task;
}
