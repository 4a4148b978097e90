import type { Phrase } from '../../languages/index.js';
import type { UncertaintyBudget } from '../../uncertainty/index.js';
import type { Presentation } from './presentation.js';

/** What the inputs of a test are, in words. */
const inputs: Readonly<Record<string, Phrase | undefined>> = {
  force: 'scale of the force',
  forceZero: 'zero of the force',
  displacement: 'scale of the displacement',
  gaugeLength: 'gauge length L0',
  extensometerLength: 'base of the extensometer Le',
  parallelLength: 'parallel length Lc',
  effectiveLength: 'effective length Leff',
  frameCompliance: 'compliance of the frame',
  finalGaugeLength: 'gauge length after fracture Lu',
  finalArea: 'area after fracture Su',
  noise: 'noise of the record',
  'shift by noise': 'shift by noise',
  'peak between samples': 'peak between samples',
  'neck that begins suddenly': 'neck that begins suddenly',
  'bend of the elastic line': 'bend of the elastic line',
  'choice of the window': 'choice of the window',
  'plateau of the force': 'plateau of the force',
  'stretch of the tangent': 'stretch of the tangent',
  'yielding and toe in the elastic line': 'yielding and toe in the elastic line',
  'noise of the strain in the elastic line': 'noise of the strain in the elastic line',
  'steps of the strain in the elastic line': 'steps of the strain in the elastic line',
  'flatter windows beside the elastic line': 'flatter windows beside the elastic line',
  'falls that may be strokes or slips': 'falls that may be strokes or slips',
};

/** @internal What a line of a budget stands for, in words. */
export function sourceInWords({ input, source }: UncertaintyBudget['lines'][number], { say, term, labelled }: Presentation): string {
  const known = Object.hasOwn(inputs, input) ? inputs[input] : undefined;
  const [, dimension] = /^section\.(.+)$/.exec(input) ?? [];
  const words =
    dimension !== undefined
      ? say('{dimension} of the section', { dimension: term(dimension) })
      : known === undefined
        ? term(input)
        : say(known);
  return source === undefined || source === input ? words : labelled(words, term(source));
}
